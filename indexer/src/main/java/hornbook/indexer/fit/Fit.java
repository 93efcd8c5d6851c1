package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.Lot;
import hornbook.shared.store.Books;
import hornbook.shared.store.View;
import java.util.ArrayList;
import java.util.List;

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
        Pieces pieces = new Pieces(reader, threads);
        OnHand onHand = new OnHand(view.all(Lot.class), pieces);
        Asked asked = new FitReader(catalogue, reader, threads).read(question, onHand);
        ShopFloor floor = ShopFloor.of(view, reader, threads);
        Trying trying = new Trying(asked, threads, floor.rack(), new Charges(asked.model()), floor.minutes());
        List<Piece> all = new ArrayList<>();
        if (!asked.own().isEmpty()) {
            String kind = asked.kind().id();
            all.add(pieces.inHand(kind, asked.crafts().of(kind), asked.own()));
        }
        onHand.suiting(asked.crafts())
                .forEach(lot -> all.add(pieces.of(lot, asked.crafts().of(lot.item()))));
        all.forEach(trying::tried);
        return new Answering(asked, trying, floor, threads, catalogue).answer();
    }
}
