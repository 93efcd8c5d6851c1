package hornbook.viewer.hand;

import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.LotLine;
import hornbook.shared.stock.OpenJob;
import hornbook.viewer.ask.Ask;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is shown of an open drawer at one moment.
 *
 * @param card the drawer; null while none is open
 * @param jobs what parts may be taken for
 * @param chosen place of the lot that is in hand, -1 where none is
 * @param act what is being asked about; null while nothing is
 * @param ask the question; set together with {@code act}
 * @param trouble what was refused, in a sentence
 */
record HandView(
        @Nullable DrawerCard card,
        List<OpenJob> jobs,
        int chosen,
        @Nullable Act act,
        @Nullable Ask ask,
        @Nullable String trouble) {
    static final HandView NOTHING = new HandView(null, List.of(), -1, null, null, null);

    static HandView of(Opened opened, int chosen) {
        int last = opened.card().lots().size() - 1;
        return new HandView(
                opened.card(), opened.jobs(), Math.clamp(chosen, Math.min(0, last), last), null, null, null);
    }

    Optional<LotLine> lot() {
        return card == null || chosen < 0
                ? Optional.empty()
                : Optional.of(card.lots().get(chosen));
    }

    HandView choosing(int lot) {
        int last = card == null ? -1 : card.lots().size() - 1;
        return new HandView(card, jobs, Math.clamp(lot, Math.min(0, last), last), null, null, null);
    }

    HandView asking(Act what, Ask question) {
        return new HandView(card, jobs, chosen, what, question, null);
    }

    HandView answered() {
        return new HandView(card, jobs, chosen, null, null, null);
    }

    HandView troubled(String why) {
        return ask == null
                ? new HandView(card, jobs, chosen, act, null, why)
                : new HandView(card, jobs, chosen, act, ask.troubled(why), null);
    }

    /** What the label might say instead: only where it does not say what is in the drawer. */
    String proposal() {
        return card == null || card.labelState() == null || card.labelState().equals("right") ? "" : Proposal.of(card);
    }
}
