package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.exchange.KnowledgeSheets;
import hornbook.shared.exchange.Import;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The demonstration shop in a folder of its own, and its planner. */
record DemoShop(Books books, Fit fit) implements AutoCloseable {
    private static final Path FILES = Path.of("../viewer/src/main/resources/hornbook/viewer/demo");

    static DemoShop in(Path folder) {
        Books books = Books.open(folder, Access.WRITE);
        new Import(books, new KnowledgeSheets(Catalogue.shipped())).from(FILES, false);
        return new DemoShop(
                books,
                new Fit(
                        books,
                        Catalogue.open(folder.resolve("entries")),
                        StandardSizes.load().reader()));
    }

    /**
     * Puts a question.
     *
     * @param asked diameter, length, bore, thread, and further ones as name=value, semicolons between; - for none
     * @param model the horn's, or -
     */
    FitAnswer ask(String kind, String asked, String model) {
        List<String> parts = List.of(asked.split(" *; *", -1));
        return fit.answer(new FitQuestion(
                kind,
                given(parts.get(0)),
                given(parts.get(1)),
                given(parts.get(2)),
                given(parts.get(3)),
                parts.subList(4, parts.size()),
                List.of(),
                given(model),
                false,
                1));
    }

    private static Optional<String> given(String text) {
        return text.equals("-") ? Optional.empty() : Optional.of(text);
    }

    @Override
    public void close() {
        books.close();
    }
}
