package hornbook.catalogue.pack;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;

/**
 * An entry of a pack against what is known here.
 *
 * @param kind of entry
 * @param fields where the two differ; none for a new one
 */
public record Difference(String id, String kind, String title, What what, List<Field> fields) {
    /** Keeps its own copy. */
    public Difference {
        fields = List.copyOf(fields);
    }

    /** What becomes of it. */
    public enum What {
        /** Not known here. */
        NEW("new"),
        /** Known here, word for word. */
        SAME("same"),
        /** Replaces what is known here. */
        CHANGED("changed"),
        /** Differs from the shop's own, which stays. */
        KEPT("kept");

        private final String word;

        What(String word) {
            this.word = word;
        }

        /** The word as printed. */
        @JsonValue
        public String word() {
            return word;
        }
    }

    /**
     * A field in which they differ, as JSON; empty where it is not there.
     *
     * @param field its name
     */
    public record Field(String field, String here, String theirs) {}
}
