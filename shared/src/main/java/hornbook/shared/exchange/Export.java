package hornbook.shared.exchange;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.store.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Writes a shop as exchange files, byte for byte the same for the same books. */
public final class Export {
    static final String SETTINGS = "shop.json";

    private final Books books;
    private final KnowledgeFiles knowledge;

    public Export(Books books, KnowledgeFiles knowledge) {
        this.books = books;
        this.knowledge = knowledge;
    }

    /** What was written. */
    public record Answer(Path folder, List<String> files) {}

    /**
     * Writes every file into a folder, made if missing; files of the same name are replaced.
     *
     * @throws BadInput where the folder cannot be written
     */
    public Answer to(Path folder) {
        try {
            Files.createDirectories(folder);
            for (Kind<? extends ShopRecord> kind : Kind.ALL) {
                write(kind, folder);
            }
            Files.writeString(folder.resolve(SETTINGS), settings());
            knowledge.write(folder);
        } catch (IOException e) {
            throw new BadInput(folder + " cannot be written: name a folder with --to that can, and check the disk");
        }
        try (var written = Files.list(folder)) {
            return new Answer(
                    folder,
                    written.map(f -> f.getFileName().toString()).sorted().toList());
        } catch (IOException e) {
            throw new BadInput(folder + " cannot be read back: check its permissions");
        }
    }

    private <T extends ShopRecord> void write(Kind<T> kind, Path folder) throws IOException {
        List<List<String>> rows =
                books.all(kind.type()).stream().map(kind.columns()::cells).toList();
        if (kind.always() || !rows.isEmpty()) {
            CsvFile.write(folder.resolve(kind.file()), kind.columns().names(), rows);
        }
    }

    private String settings() {
        return books.settings().stream()
                .map(name -> " \"" + name + "\": " + books.setting(name).orElseThrow())
                .collect(Collectors.joining(",\n", "{\n", "\n}"));
    }
}
