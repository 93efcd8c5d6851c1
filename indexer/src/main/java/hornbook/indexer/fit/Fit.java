package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Place;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.shop.ToolMember;
import hornbook.shared.store.Books;
import hornbook.shared.store.View;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Says what on hand can be made to fit, by which work, and what was refused and why.
 *
 * <pre>{@code
 * FitAnswer answer = new Fit(books, catalogue, sizes).answer(FitQuestion.of("part-hinge-rod", "diameter=2.38", "length=118"));
 * }</pre>
 */
public final class Fit {
    private final Books books;
    private final Catalogue catalogue;
    private final SizeReader reader;

    public Fit(Books books, Catalogue catalogue, SizeReader reader) {
        this.books = books;
        this.catalogue = catalogue;
        this.reader = reader;
    }

    /**
     * The answer.
     *
     * @throws hornbook.shared.shop.BadInput naming what cannot be read, and the nearest that could
     */
    public FitAnswer answer(FitQuestion question) {
        return books.reading(view -> answer(question, view));
    }

    private FitAnswer answer(FitQuestion question, View view) {
        Threads threads = new Threads(reader);
        List<Lot> lots = view.all(Lot.class);
        Asked asked = new FitReader(catalogue, reader, threads).read(question, crafts -> stated(lots, crafts));
        ShopRack rack = new ShopRack(view.all(ShopTool.class), view.all(ToolMember.class), reader, threads);
        Minutes minutes = OwnMinutes.of(view.all(TaskTime.class));
        Trying trying = new Trying(asked, threads, rack, new Charges(asked.model()), minutes);
        Pieces pieces = new Pieces(reader, threads);
        List<Piece> all = new ArrayList<>();
        if (!asked.own().isEmpty()) {
            String kind = asked.kind().id();
            all.add(pieces.inHand(kind, asked.crafts().of(kind), asked.own()));
        }
        lots.stream()
                .filter(lot -> asked.crafts().suits(lot.item()))
                .forEach(lot -> all.add(pieces.of(lot, asked.crafts().of(lot.item()))));
        all.forEach(trying::tried);
        Places places = new Places(view.all(Drawer.class), view.all(Place.class));
        return new Answering(asked, trying, rack, places, minutes, threads, catalogue).answer();
    }

    private List<String> stated(List<Lot> lots, Crafts crafts) {
        TreeSet<String> names = new TreeSet<>();
        lots.stream()
                .filter(lot -> crafts.suits(lot.item()))
                .forEach(lot -> names.addAll(Pieces.named(lot.dimensions())));
        return List.copyOf(names);
    }
}
