package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The shop's own entry files: replaced whole, so that a reader sees the old one or the new one and never half. */
final class EntryFiles {
    private static final Pattern PATH = Pattern.compile("[a-z0-9-]+/[A-Za-z0-9.-]+\\.json");

    private final Path folder;

    EntryFiles(Path folder) {
        this.folder = folder;
    }

    @Nullable
    String read(String path) {
        Path file = file(path);
        try {
            return Files.exists(file) ? Files.readString(file) : null;
        } catch (IOException e) {
            throw new ShopUnavailable(file + " cannot be read: check its permissions", e);
        }
    }

    void write(String path, @Nullable String content) {
        Path file = file(path);
        Path kind = Objects.requireNonNull(file.getParent());
        try {
            Files.createDirectories(kind);
            if (content == null) {
                Files.deleteIfExists(file);
            } else {
                replace(file, content);
            }
            sync(kind);
        } catch (IOException e) {
            throw new ShopUnavailable(file + " cannot be written: make room or check its permissions", e);
        }
    }

    private static void replace(Path file, String content) throws IOException {
        Path aside = file.resolveSibling("." + file.getFileName() + ".new");
        try (FileChannel channel = FileChannel.open(
                aside, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(content.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
        Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE);
    }

    /** A rename is only on the disk once its folder is. */
    private static void sync(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems cannot open a folder; they order renames themselves.
        }
    }

    private Path file(String path) {
        if (!PATH.matcher(path).matches()) {
            throw new BadInput("entry file " + path + ": the name must be kind/id.json in plain letters");
        }
        return folder.resolve(path);
    }
}
