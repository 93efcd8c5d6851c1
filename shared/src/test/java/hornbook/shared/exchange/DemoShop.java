package hornbook.shared.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Path;

/** The whole books of the invented shop, as shipped: read where they stand, so that there is one copy of them. */
public final class DemoShop {
    private static final Path FILES = Path.of("../viewer/src/main/resources/hornbook/viewer/demo");

    private DemoShop() {}

    /** Opens such a shop in an empty folder; today is 2026-09-30. */
    public static Books open(Path folder) {
        Books books = Books.open(folder, Access.WRITE);
        ImportReport report = new Import(books, new NoKnowledge()).from(FILES, false);
        assertThat(report.refused()).isEmpty();
        return books;
    }
}
