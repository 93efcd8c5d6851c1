package hornbook.indexer.brief;

import hornbook.shared.thread.ThreadAnswer.LookAlike;
import java.util.List;

/**
 * A thread to expect.
 *
 * @param use pivot, hinge-rod, neck-screw, guard-screw …
 * @param designation as its standard writes it
 * @param probability over the candidates that state one
 * @param lookAlikes screws of other threads that start in its hole: what not to put in, the most alike first
 */
public record ThreadLine(String use, String designation, double probability, List<LookAlike> lookAlikes) {
    /** Keeps its own copy. */
    public ThreadLine {
        lookAlikes = List.copyOf(lookAlikes);
    }
}
