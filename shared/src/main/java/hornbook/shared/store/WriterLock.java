package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** One writer a shop: a lock of the operating system, which ends with its process however that ends. */
record WriterLock(FileChannel channel, FileLock lock) implements AutoCloseable {

    static Optional<WriterLock> take(Path folder) {
        Path file = folder.resolve("lock");
        try {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            Optional<FileLock> lock = attempt(channel);
            if (lock.isEmpty()) {
                channel.close();
            }
            return lock.map(taken -> new WriterLock(channel, taken));
        } catch (IOException e) {
            throw new ShopUnavailable("cannot write in " + folder + ": check its permissions and the disk", e);
        }
    }

    private static Optional<FileLock> attempt(FileChannel channel) throws IOException {
        try {
            return Optional.ofNullable(channel.tryLock());
        } catch (OverlappingFileLockException heldByThisProcess) {
            return Optional.empty();
        }
    }

    @Override
    public void close() {
        try {
            lock.release();
            channel.close();
        } catch (IOException e) {
            // The process ends its locks anyway.
        }
    }
}
