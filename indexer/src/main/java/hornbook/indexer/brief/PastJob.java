package hornbook.indexer.brief;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A job that may teach something.
 *
 * @param kin how near: this horn, model, pattern, seller, make
 * @param minutes clocked; missing where nothing was
 * @param measured what was measured, each in a line
 * @param quirksMet ids
 */
public record PastJob(
        String id,
        LocalDate tookIn,
        String horn,
        String model,
        Kin kin,
        String kind,
        String complaint,
        @Nullable String went,
        String wentNote,
        @Nullable Integer minutes,
        @Nullable Integer quotedMin,
        List<String> measured,
        List<String> quirksMet) {
    /** Keeps its own copies. */
    public PastJob {
        measured = List.copyOf(measured);
        quirksMet = List.copyOf(quirksMet);
    }
}
