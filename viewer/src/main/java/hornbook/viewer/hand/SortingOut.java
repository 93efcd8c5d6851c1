package hornbook.viewer.hand;

import hornbook.shared.shop.LotState;
import hornbook.shared.stock.Alike;
import hornbook.shared.stock.BagBook;
import hornbook.shared.stock.LotCard;
import hornbook.shared.stock.LotLine;
import hornbook.shared.stock.Piece;
import hornbook.shared.store.Deed;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** A piece out of a grab bag: first what it is, then where pieces like it lie and which of these places it gets. */
public final class SortingOut {
    private static final String INTO = "into ";

    private final BagBook bags;
    private final Supplier<Alike> alike;
    private final Described described;

    public SortingOut(BagBook bags, Supplier<Alike> alike, Described described) {
        this.bags = bags;
        this.alike = alike;
        this.described = described;
    }

    static Ask what(LotLine bag) {
        return new Ask(
                "Sort out of: " + bag.title(), Described.fields("How many", "1", LotState.SALVAGED), "Where to?", null);
    }

    /** Looks where like pieces lie. @throws hornbook.shared.shop.BadInput where what was said cannot be read */
    Ask where(Answers said, String here) {
        Piece piece = described.piece(said);
        said.whole("count", "how many");
        List<LotCard> near = alike.get().to(piece);
        Stream<Choice> lots = near.stream().map(lot -> new Choice(INTO + lot.id(), words(lot)));
        Stream<Choice> beside = near.stream()
                .map(lot -> new Choice(lot.drawer(), place(lot) + ": a lot of their own"))
                .distinct();
        List<Choice> choices = new ArrayList<>(Stream.concat(lots, beside).toList());
        choices.add(new Choice(here, "this drawer: a lot of their own"));
        return new Ask(
                "Where to: " + piece.title(),
                "Put there",
                Field.choice("to", near.isEmpty() ? "Nothing like it is known" : "The likest first", choices),
                Field.text("elsewhere", "Or elsewhere: label, number or code", ""));
    }

    private static String words(LotCard lot) {
        String thread = lot.thread() == null ? "" : " " + lot.thread();
        return place(lot) + ": to the " + lot.count() + " there, " + lot.title() + thread + " "
                + lot.dimensions().replace(";", " ");
    }

    private static String place(LotCard lot) {
        return lot.drawerLabel().isBlank() ? lot.drawer() : "“" + lot.drawerLabel() + "”";
    }

    Deed done(String bag, Answers said, Answers where) {
        int pieces = said.whole("count", "how many");
        String elsewhere = where.text("elsewhere");
        String to = elsewhere.isEmpty() ? where.needed("to", "where to") : elsewhere;
        return to.startsWith(INTO)
                ? bags.sortOutInto(bag, pieces, to.substring(INTO.length()))
                : bags.sortOut(bag, pieces, described.piece(said), to);
    }
}
