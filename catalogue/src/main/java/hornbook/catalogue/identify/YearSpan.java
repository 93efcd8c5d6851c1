package hornbook.catalogue.identify;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;

/** Years that hold four in five, both ends included; in JSON a pair. */
public record YearSpan(int from, int to) {
    /** From its pair. */
    @JsonCreator
    static YearSpan of(List<Integer> pair) {
        return new YearSpan(pair.getFirst(), pair.getLast());
    }

    /** As a pair. */
    @JsonValue
    public List<Integer> pair() {
        return List.of(from, to);
    }
}
