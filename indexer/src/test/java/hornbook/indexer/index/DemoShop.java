package hornbook.indexer.index;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.exchange.KnowledgeSheets;
import hornbook.shared.exchange.Import;
import hornbook.shared.store.Books;
import java.nio.file.Path;

/** The demonstration shop, taken in through the exchange format as anybody's shop is. */
public final class DemoShop {
    private static final Path FILES = Path.of("../viewer/src/main/resources/hornbook/viewer/demo");

    private DemoShop() {}

    public static Books open(Path folder) {
        Path files =
                FILES.toFile().isDirectory() ? FILES : Path.of(FILES.toString().substring(3));
        Books books = Shops.open(folder);
        new Import(books, new KnowledgeSheets(Catalogue.shipped())).from(files, false);
        return books;
    }
}
