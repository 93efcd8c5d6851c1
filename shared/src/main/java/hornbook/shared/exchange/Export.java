package hornbook.shared.exchange;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.Photo;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.store.Books;
import hornbook.shared.store.SafeFiles;
import hornbook.shared.store.View;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.databind.json.JsonMapper;

/** Writes a shop as exchange files, byte for byte the same for the same books. */
public final class Export {
    static final String SETTINGS = "shop.json";
    private static final JsonMapper JSON = new JsonMapper();

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
        return to(folder, false);
    }

    /** As {@link #to(Path)}; with the customers only where that was asked for. */
    public Answer to(Path folder, boolean withCustomers) {
        try {
            Files.createDirectories(folder);
            List<String> files = new ArrayList<>(written(folder, withCustomers ? Kind.KEPT : Kind.ALL));
            knowledge.write(folder, FileOrder.of(books));
            files.addAll(knowledge.names());
            return new Answer(folder, files.stream().sorted().toList());
        } catch (IOException | UncheckedIOException e) {
            throw new BadInput(folder + " cannot be written: name a folder with --to that can, and check the disk");
        }
    }

    private List<String> written(Path folder, List<Kind<? extends ShopRecord>> kinds) {
        return books.reading(view -> {
            List<String> files = new ArrayList<>(List.of(SETTINGS));
            try {
                OutOfUse gone = OutOfUse.named(view);
                for (Kind<? extends ShopRecord> kind : kinds) {
                    if (write(view, kind, gone, folder)) {
                        files.add(kind.file());
                    }
                }
                if (gone.write(folder)) {
                    files.add(OutOfUse.FILE);
                }
                new PhotoFiles(books).copy(view.all(Photo.class), folder);
                SafeFiles.replace(folder.resolve(SETTINGS), settings(view).getBytes(StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return files;
        });
    }

    private static <T extends ShopRecord> boolean write(View view, Kind<T> kind, OutOfUse gone, Path folder)
            throws IOException {
        List<List<String>> rows = Stream.concat(view.all(kind.type()).stream(), gone.of(view, kind).stream())
                .map(kind.columns()::cells)
                .toList();
        if (!kind.always() && rows.isEmpty()) {
            return false;
        }
        CsvFile.write(folder.resolve(kind.file()), kind.columns().names(), rows);
        return true;
    }

    private static String settings(View view) {
        return view.settings().stream()
                .filter(name -> !name.equals(FileOrder.SETTING))
                .map(name -> " " + JSON.writeValueAsString(name) + ": "
                        + view.setting(name).orElseThrow())
                .collect(Collectors.joining(",\n", "{\n", "\n}"));
    }
}
