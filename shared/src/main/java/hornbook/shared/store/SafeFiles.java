package hornbook.shared.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Files that are on the disk, whole, when the call returns. */
public final class SafeFiles {
    private SafeFiles() {}

    /** Writes a file and waits until the disk has it. */
    public static void write(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(content);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        } catch (IOException e) {
            Files.deleteIfExists(file);
            throw e;
        }
    }

    /** Writes a file so that its name holds the old content or the new one and never half. */
    public static void replace(Path file, byte[] content) throws IOException {
        Path aside = file.resolveSibling("." + file.getFileName() + ".new");
        write(aside, content);
        rename(aside, file);
    }

    /** Renames over what is there, and waits until the disk has it. */
    public static void rename(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
        Path folder = to.toAbsolutePath().getParent();
        if (folder != null) {
            sync(folder);
        }
    }

    /** A rename is only on the disk once its folder is. */
    public static void sync(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems cannot open a folder; they order renames themselves.
        }
    }
}
