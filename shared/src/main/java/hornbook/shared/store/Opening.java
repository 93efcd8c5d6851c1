package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Opens a shop's folder: checks what it is, takes the lock, brings the file to today's shape. */
final class Opening {
    static final String FILE = "shop.db";
    static final String ENTRIES = "entries";

    private final Path folder;
    private final Path file;
    private final Access access;

    Opening(Path folder, Access access) {
        this.folder = folder;
        this.file = folder.resolve(FILE);
        this.access = access;
    }

    Books open(@Nullable LocalDate today) {
        Swap.finishIfUnderWay(folder);
        refuseWhatIsNoShop();
        if (access == Access.READ) {
            return toRead(today);
        }
        Optional<WriterLock> lock = lock();
        if (lock.isPresent()) {
            return toWrite(lock.get(), today);
        }
        if (access == Access.WRITE) {
            throw new ShopUnavailable(
                    "the shop in " + folder + " is held by another Hornbook that writes: close that one first");
        }
        return toRead(today);
    }

    /** A folder that cannot be written has no writer: it is opened to read where that will do. */
    private Optional<WriterLock> lock() {
        try {
            return WriterLock.take(folder);
        } catch (ShopUnavailable e) {
            if (access == Access.WRITE_IF_FREE) {
                return Optional.empty();
            }
            throw e;
        }
    }

    private void refuseWhatIsNoShop() {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new ShopUnavailable(folder + " is a file, not a folder: name the shop's folder with --shop DIR");
        }
        if (Files.isRegularFile(file)) {
            return;
        }
        if (access != Access.WRITE) {
            throw noShop();
        }
        make();
    }

    private ShopUnavailable noShop() {
        return new ShopUnavailable("there is no shop in " + folder
                + ": “hornbook demo” makes one to try, “hornbook import” one of your own");
    }

    private void make() {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new ShopUnavailable(folder + " cannot be made: check the permissions above it", e);
        }
    }

    private Books toWrite(WriterLock lock, @Nullable LocalDate today) {
        Query query = null;
        try {
            Swap.sweep(folder);
            query = new Query(Database.toWrite(file));
            int shape = Migrations.shape(query, file);
            if (shape > 0 && shape < Migrations.SHAPE) {
                Backups.copyBefore(query, folder, shape);
            }
            Migrations.run(query, shape, Migrations.SHAPE);
            Writer writer = new Writer(query, new EntryFiles(folder.resolve(ENTRIES)));
            return new Books(folder, lock, new Readers(file), writer, today);
        } catch (SQLException e) {
            close(query, lock);
            throw Database.damaged(file, e);
        } catch (IOException e) {
            close(query, lock);
            throw new ShopUnavailable(folder + " cannot be read: check its permissions", e);
        } catch (RuntimeException | Error e) {
            close(query, lock);
            throw e;
        }
    }

    private static void close(@Nullable Query query, WriterLock lock) {
        try (lock) {
            if (query != null) {
                query.close();
            }
        }
    }

    private Books toRead(@Nullable LocalDate today) {
        Readers readers = new Readers(file);
        try {
            int shape = readers.read(query -> Migrations.shape(query, file));
            if (shape == 0) {
                throw noShop();
            }
            if (shape < Migrations.SHAPE) {
                throw new ShopUnavailable(file + " was written by an older Hornbook, and changes its shape when it is"
                        + " first opened to write: run “hornbook index” or open the window once");
            }
            return new Books(folder, null, readers, null, today);
        } catch (RuntimeException e) {
            readers.close();
            throw e;
        }
    }
}
