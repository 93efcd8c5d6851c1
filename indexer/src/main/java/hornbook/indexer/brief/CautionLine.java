package hornbook.indexer.brief;

import java.util.List;

/**
 * How something on the fetch list can hurt.
 *
 * @param id of the caution, or of the tool or supply that carries it
 * @param of titles of what carries it
 */
public record CautionLine(String id, String title, String text, List<String> of) {
    /** Keeps its own copy. */
    public CautionLine {
        of = List.copyOf(of);
    }
}
