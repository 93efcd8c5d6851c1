package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Trait;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one trait tells about every entry. Entries are counted from 0; the number after the last is unlisted. */
sealed interface Evidence permits ChoiceEvidence, MeasureEvidence, PartsEvidence {
    Trait trait();

    /**
     * Chance of these answers on a horn of that entry.
     *
     * @param answers all of this trait, none of them "cannot tell"
     * @param except id of a horn whose teaching is left out
     */
    double likelihood(int entry, List<Seen> answers, @Nullable String except);

    /** How many answers can be got to each question the look asks; more than one only for `many` traits. */
    int[] outcomes();

    /** Chances of the answers to a question, for a horn of that entry; adds up to 1. */
    void chances(int entry, int question, double[] into);
}
