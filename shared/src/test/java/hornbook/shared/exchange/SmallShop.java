package hornbook.shared.exchange;

import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A few drawers, lots, horns and jobs of the invented shop, for tests of the rooms that read the books. */
public final class SmallShop {
    private SmallShop() {}

    /** Opens such a shop in an empty folder. */
    public static Books open(Path folder) {
        Books books = Books.open(folder, Access.WRITE);
        new Import(books, NO_KNOWLEDGE).from(Path.of("src/test/resources/small-shop"), false);
        return books;
    }

    public static final KnowledgeFiles NO_KNOWLEDGE = new KnowledgeFiles() {
        @Override
        public List<String> names() {
            return List.of();
        }

        @Override
        public Incoming read(Path folder) {
            return new Incoming(0, List.of(), List.of(), List.of(), Map.of());
        }

        @Override
        public void write(Path folder, Map<String, List<String>> order) {}
    };
}
