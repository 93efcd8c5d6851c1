package hornbook.catalogue.identify;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the horn may be.
 *
 * @param says in a line: one of these three, 9 in 10
 * @param candidates every entry from one in a million, best first
 * @param unlisted chance that no entry describes it
 * @param years over all candidates; missing where nothing is known
 * @param next what to look at, best first; nothing that takes a part off while a lesser look will do
 * @param marking looks that leave a mark, for which the owner is asked first
 * @param odd ids of traits whose answer does not fit what else was seen
 * @param remarks what a person should know about the answers given
 * @param exponent how far each look counts, 1 in full
 */
public record Answer(
        String says,
        List<Candidate> candidates,
        double unlisted,
        @Nullable YearSpan years,
        List<NextLook> next,
        List<NextLook> marking,
        List<String> odd,
        List<String> remarks,
        double exponent) {
    /** Keeps its own copies. */
    public Answer {
        candidates = List.copyOf(candidates);
        next = List.copyOf(next);
        marking = List.copyOf(marking);
        odd = List.copyOf(odd);
        remarks = List.copyOf(remarks);
    }
}
