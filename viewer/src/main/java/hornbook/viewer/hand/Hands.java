package hornbook.viewer.hand;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Count;
import hornbook.shared.stock.DrawerBook;
import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.LotLine;
import hornbook.shared.stock.Receipt;
import hornbook.shared.stock.StockBook;
import hornbook.shared.stock.Taking;
import hornbook.shared.store.Deed;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;

/** Does what was asked for: one deed a call. */
public final class Hands {
    private static final Map<String, Count> WORDS =
            Map.of("f", Count.Rough.FEW, "s", Count.Rough.SOME, "p", Count.Rough.PLENTY);

    private final StockBook stock;
    private final DrawerBook drawers;
    private final Described described;
    private final SortingOut sorting;
    private final Supplier<String> by;

    /** @param by whose hands write labels */
    public Hands(StockBook stock, DrawerBook drawers, Described described, SortingOut sorting, Supplier<String> by) {
        this.stock = stock;
        this.drawers = drawers;
        this.described = described;
        this.sorting = sorting;
        this.by = by;
    }

    /** To one lot. @throws BadInput where the answers cannot be used or the books refuse */
    Deed toLot(Act act, LotLine lot, Answers answers) {
        String id = lot.id();
        return switch (act) {
            case COUNT -> stock.count(id, count(answers.needed("count", "how many")));
            case TAKE -> stock.use(taking(id, answers));
            case PUT_IN -> putIn(id, answers);
            case MOVE -> stock.move(id, answers.needed("to", "where to"));
            case SPLIT -> stock.split(id, answers.whole("pieces", "how many"), answers.needed("to", "where to"));
            case JOIN -> stock.join(id, answers.needed("into", "which lot"));
            case SET_ASIDE -> stock.setAside(id, !reserve(lot));
            case KEEPSAKE -> stock.keepsake(id, !keepsake(lot));
            case DESCRIBE -> stock.describe(id, described.said(lot, answers), described.sizes());
            case RETIRE -> stock.retire(id);
            case SORT_OUT, FIT, LABEL, NEW, STRIP, LOOK ->
                throw new IllegalArgumentException(act + " is not done to a lot at once");
        };
    }

    /** To the whole drawer or place. @throws BadInput as {@link #toLot} */
    Deed toDrawer(Act act, DrawerCard card, Answers answers) {
        return switch (act) {
            case LABEL -> drawers.label(card.id(), answers.text("label"), by.get());
            case LOOK -> lookedThrough(card, answers);
            case NEW -> something(card, answers);
            case STRIP -> stock.strip(card.id(), answers.needed("to", "where to"));
            default -> throw new IllegalArgumentException(act + " is done to a lot");
        };
    }

    /** Brings back what was out of use. */
    Deed bringBack(String lot) {
        return stock.bringBack(lot);
    }

    /** Dated, with its label as it is or written anew. */
    private Deed lookedThrough(DrawerCard card, Answers answers) {
        String label = answers.text("label");
        String contents = answers.text("contents");
        return label.equals(card.label())
                ? drawers.lookedThrough(
                        card.id(), contents, answers.text("says").equals("yes"))
                : drawers.putRight(card.id(), label, contents, by.get());
    }

    static boolean reserve(LotLine lot) {
        return lot.heed() != null && lot.heed().startsWith("reserve");
    }

    static boolean keepsake(LotLine lot) {
        return lot.heed() != null && lot.heed().startsWith("keepsake");
    }

    private static Taking taking(String lot, Answers answers) {
        String job = answers.text("job");
        return new Taking(
                lot,
                answers.whole("pieces", "how many"),
                job.isEmpty() ? null : job,
                "",
                answers.text("reserve").equals("yes"));
    }

    private Deed putIn(String lot, Answers answers) {
        int pieces = answers.whole("pieces", "how many");
        String from = answers.text("from");
        return answers.text("how").equals("saved")
                ? stock.salvage(lot, pieces, from.isEmpty() ? "a horn" : from)
                : stock.receive(lot, new Receipt(pieces, from.isEmpty() ? null : from, null, null, null, ""));
    }

    private Deed something(DrawerCard card, Answers answers) {
        return stock.add(described.piece(answers), card.id(), count(answers.needed("count", "how many")));
    }

    /** Where a piece sorted out may go. @throws BadInput where what was said of it cannot be read */
    Ask whereTo(Answers said, DrawerCard card) {
        return sorting.where(said, card.id());
    }

    /** Sorts pieces out of a lot: what they are was said, and then where they go. */
    Deed sortOut(LotLine bag, Answers said, Answers where) {
        return sorting.done(bag.id(), said, where);
    }

    private static Count count(String written) {
        String word = written.toLowerCase(Locale.ROOT);
        Count rough = WORDS.get(word);
        if (rough != null) {
            return rough;
        }
        return Count.read(word)
                .orElseThrow(() ->
                        new BadInput("“" + written + "” is no count: write a whole number, or few, some or plenty"));
    }
}
