package hornbook.indexer.brief;

import com.fasterxml.jackson.annotation.JsonProperty;
import hornbook.catalogue.entry.CautionLevel;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A quirk that bites, or may.
 *
 * @param relevance chance that it applies, 0 to 1
 * @param possible true under nine in ten
 * @param stage id of the stage where it bites
 * @param settledBy id of the trait whose look settles a possible one
 * @param metOn the job on which it was met on this very horn
 */
public record QuirkLine(
        String id,
        String title,
        double relevance,
        boolean possible,
        String stage,
        CautionLevel caution,
        String bites,
        @JsonProperty("do") String whatToDo,
        String confirm,
        @Nullable String settledBy,
        List<String> remindedAt,
        @Nullable String metOn) {
    /** Keeps its own copy. */
    public QuirkLine {
        remindedAt = List.copyOf(remindedAt);
    }
}
