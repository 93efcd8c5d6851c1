package hornbook.shared.supply;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Lot;
import java.time.LocalDate;

/**
 * A verdict and its reason, which is never left out: in two years nobody knows it any more.
 *
 * @param why what a test or use showed, in a sentence
 */
public record Judged(Verdict verdict, String why) {
    /** @throws BadInput where no reason is given */
    public Judged {
        if (why.isBlank()) {
            throw new BadInput("a verdict needs its reason: say in a sentence what the test showed");
        }
        why = why.strip();
    }

    /** The lot with the verdict in its note, after what stands there. */
    public Lot on(Lot lot, LocalDate day) {
        String note = lot.note().isBlank() ? "" : lot.note() + "; ";
        return lot.withNote(note + Verdicts.MARK + verdict.written() + ", " + day + ": " + why);
    }
}
