package hornbook.viewer.hand;

import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.LotLine;
import java.util.stream.Collectors;

/** A label that says what is in a drawer, for a person to take or to write better. */
final class Proposal {
    private static final int MOST_KINDS = 3;

    private Proposal() {}

    /** What was found in it, else what its lots are called; empty where nothing is known. */
    static String of(DrawerCard card) {
        return card.contents().isBlank() ? lots(card) : card.contents();
    }

    private static String lots(DrawerCard card) {
        return card.lots().stream()
                .filter(lot -> !lot.count().equals("0"))
                .map(LotLine::title)
                .map(title -> title.replaceFirst(",.*", ""))
                .distinct()
                .limit(MOST_KINDS)
                .collect(Collectors.joining(", "));
    }
}
