package hornbook.viewer;

import hornbook.shared.exchange.Import;
import hornbook.shared.exchange.KnowledgeFiles;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import java.util.List;

/** The books of the demonstration shop, for tests that need a full room of drawers. */
public final class DemoBooks {
    private DemoBooks() {}

    public static Books open(Path folder) {
        Books books = Books.open(folder, Access.WRITE);
        new Import(books, NO_KNOWLEDGE).from(Path.of("src/main/resources/hornbook/viewer/demo"), false);
        return books;
    }

    private static final KnowledgeFiles NO_KNOWLEDGE = new KnowledgeFiles() {
        @Override
        public List<String> names() {
            return List.of();
        }

        @Override
        public Incoming read(Path folder) {
            return new Incoming(0, List.of(), List.of(), List.of());
        }

        @Override
        public void write(Path folder) {}
    };
}
