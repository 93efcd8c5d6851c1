package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The shop's own entry files: replaced whole, so that a reader sees the old one or the new one and never half. */
final class EntryFiles {
    private static final Pattern PATH = Pattern.compile("[a-z0-9-]+/[A-Za-z0-9][A-Za-z0-9.-]*\\.json");

    private final Path folder;

    EntryFiles(Path folder) {
        this.folder = folder;
    }

    @Nullable
    String read(String path) {
        Path file = file(path);
        try {
            return Files.exists(file) ? new String(Files.readAllBytes(file), StandardCharsets.UTF_8) : null;
        } catch (IOException e) {
            throw new ShopUnavailable(file + " cannot be read: check its permissions", e);
        }
    }

    /** The paths of the entry files there are, in order. */
    TreeSet<String> paths() {
        TreeSet<String> paths = new TreeSet<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.walk(folder, 2)) {
                files.map(f -> folder.relativize(f).toString().replace('\\', '/'))
                        .filter(path -> PATH.matcher(path).matches())
                        .forEach(paths::add);
            } catch (IOException e) {
                throw new ShopUnavailable(folder + " cannot be read: check its permissions", e);
            }
        }
        return paths;
    }

    /** Writes the content beside its file, safe on the disk: what may fail for want of room fails here. */
    void prepare(String path, @Nullable String content) {
        Path file = file(path);
        try {
            Files.createDirectories(Objects.requireNonNull(file.getParent()));
            if (content != null) {
                SafeFiles.write(aside(file), content.getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new ShopUnavailable(
                    file + " cannot be written, nothing was changed: make room or check its permissions", e);
        }
    }

    /** Puts what was prepared in place; prepares it again where a crash came between. */
    void put(String path, @Nullable String content) {
        Path file = file(path);
        try {
            if (content == null) {
                Files.deleteIfExists(file);
                SafeFiles.sync(Objects.requireNonNull(file.getParent()));
            } else {
                if (!Files.exists(aside(file))) {
                    prepare(path, content);
                }
                SafeFiles.rename(aside(file), file);
            }
        } catch (IOException e) {
            throw new ShopUnavailable(
                    file + " cannot be written: make room or check its permissions; it is saved in the books and is"
                            + " written when the shop is next opened",
                    e);
        }
    }

    private static Path aside(Path file) {
        return file.resolveSibling("." + file.getFileName() + ".new");
    }

    private Path file(String path) {
        if (!PATH.matcher(path).matches()) {
            throw new BadInput("entry file " + path + ": the name must be kind/id.json in plain letters");
        }
        return folder.resolve(path);
    }
}
