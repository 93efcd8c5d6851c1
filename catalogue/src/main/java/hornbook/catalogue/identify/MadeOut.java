package hornbook.catalogue.identify;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a horn turned out to be, and what was seen on the way there.
 *
 * @param horn its number in the books
 * @param model id of a model, or {@code unlisted}
 * @param by how that is known
 * @param job on which the looks are written down; without one the horn's newest
 * @param looks taken; what the books hold already is not written twice
 * @param serial as read; null leaves what the books have
 */
public record MadeOut(
        String horn,
        String model,
        Confirmation by,
        @Nullable String job,
        List<Seen> looks,
        @Nullable String serial) {
    /** Keeps its own copy. */
    public MadeOut {
        looks = List.copyOf(looks);
    }

    /** Without looks of its own. */
    public static MadeOut of(String horn, String model, Confirmation by) {
        return new MadeOut(horn, model, by, null, List.of(), null);
    }

    MadeOut as(String other, Confirmation how) {
        return new MadeOut(horn, other, how, job, looks, serial);
    }
}
