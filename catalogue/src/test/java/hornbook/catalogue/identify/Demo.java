package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.exchange.KnowledgeSheets;
import hornbook.shared.exchange.Import;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** The demonstration shop: invented from end to end, as its exchange files bring it in. */
public final class Demo implements AutoCloseable {
    private static final Path FILES = Path.of("../viewer/src/main/resources/hornbook/viewer/demo");

    private final Books books;
    private final Catalogue catalogue;

    public Demo(Path folder) {
        books = Books.open(folder, Access.WRITE);
        new Import(books, new KnowledgeSheets(Catalogue.shipped())).from(FILES, false);
        catalogue = Catalogue.open(folder.resolve("entries"));
    }

    public Books books() {
        return books;
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    public Identify identify() {
        return new Identify(catalogue, books);
    }

    /** Looks as a person writes them. */
    public List<Seen> seen(String... looks) {
        SeenReader reader = new SeenReader(catalogue);
        return Arrays.stream(looks).map(reader::read).toList();
    }

    @Override
    public void close() {
        books.close();
    }
}
