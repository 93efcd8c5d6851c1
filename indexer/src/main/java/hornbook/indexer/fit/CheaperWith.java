package hornbook.indexer.fit;

import java.util.List;

/**
 * What a lot would take if a tool that is lent, missing or broken were there and good.
 *
 * @param lacks the tool, and where it is or what it has, in words
 * @param minutes of work
 * @param charge for spoiling something better, minutes
 * @param total both
 * @param steps what would be done, in words
 */
public record CheaperWith(String lacks, double minutes, double charge, double total, List<String> steps) {
    /** Keeps its own copy. */
    public CheaperWith {
        steps = List.copyOf(steps);
    }
}
