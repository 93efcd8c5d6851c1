package hornbook.catalogue.identify;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a horn.
 *
 * @param seen looks, in any order
 * @param serial as read: letters, digits, {@code ?} for each that cannot be made out
 * @param mark name on the horn, letter for letter
 * @param instrument value of `family-member`
 * @param horn id of a horn in the books, whose own findings count as looks; it is left out of what the shop learned
 * @param plain without learning and without tempering, as reference figures are made
 * @param consent whether the owner agreed to looks that leave a mark
 * @param model id of the model that it is taken to be, whatever the looks say
 */
public record Question(
        List<Seen> seen,
        @Nullable String serial,
        @Nullable String mark,
        @Nullable String instrument,
        @Nullable String horn,
        boolean plain,
        boolean consent,
        @Nullable String model) {
    /** Keeps its own copy. */
    public Question {
        seen = List.copyOf(seen);
    }

    /** Looks alone, with learning. */
    public static Question of(List<Seen> seen) {
        return new Question(seen, null, null, null, null, false, false, null);
    }

    /** The same without learning or tempering. */
    public Question asPlain() {
        return new Question(seen, serial, mark, instrument, horn, true, consent, model);
    }

    /** The same with that serial. */
    public Question withSerial(@Nullable String read) {
        return new Question(seen, read, mark, instrument, horn, plain, consent, model);
    }

    /** The same with that name on it. */
    public Question withMark(@Nullable String read) {
        return new Question(seen, serial, read, instrument, horn, plain, consent, model);
    }

    /** The same with those looks instead. */
    public Question withSeen(List<Seen> looks) {
        return new Question(looks, serial, mark, instrument, horn, plain, consent, model);
    }

    /** The same about a horn of the books. */
    public Question about(String hornId) {
        return new Question(seen, serial, mark, instrument, hornId, plain, consent, model);
    }

    /** The same, taken to be that model. */
    public Question takenFor(String modelId) {
        return new Question(seen, serial, mark, instrument, horn, plain, consent, modelId);
    }
}
