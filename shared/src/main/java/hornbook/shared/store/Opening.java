package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Opens a shop's folder: checks what it is, takes the lock, brings the file to today's shape. */
final class Opening {
    static final String FILE = "shop.db";

    private final Path folder;
    private final Path file;
    private final Access access;

    Opening(Path folder, Access access) {
        this.folder = folder;
        this.file = folder.resolve(FILE);
        this.access = access;
    }

    Books open(@Nullable LocalDate today) {
        refuseWhatIsNoShop();
        if (access == Access.READ || (access == Access.WRITE_IF_FREE && !Files.isWritable(folder))) {
            return toRead(today);
        }
        Optional<WriterLock> lock = WriterLock.take(folder);
        if (lock.isPresent()) {
            return toWrite(lock.get(), today);
        }
        if (access == Access.WRITE) {
            throw new ShopUnavailable(
                    "the shop in " + folder + " is held by another Hornbook that writes: close that one first");
        }
        return toRead(today);
    }

    private void refuseWhatIsNoShop() {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new ShopUnavailable(folder + " is a file, not a folder: name the shop's folder with --shop DIR");
        }
        if (Files.isRegularFile(file)) {
            return;
        }
        if (access != Access.WRITE) {
            throw new ShopUnavailable("there is no shop in " + folder
                    + ": “hornbook demo” makes one to try, “hornbook import” one of your own");
        }
        make();
    }

    private void make() {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new ShopUnavailable(folder + " cannot be made: check the permissions above it", e);
        }
    }

    private Books toWrite(WriterLock lock, @Nullable LocalDate today) {
        try {
            Connection connection = Database.toWrite(file);
            int shape = Migrations.shape(connection, file);
            if (shape > 0 && shape < Migrations.SHAPE) {
                Backups.copyBefore(connection, folder, shape);
            }
            Migrations.run(connection, shape);
            Writer writer = new Writer(connection, new EntryFiles(folder.resolve("entries")));
            return new Books(folder, lock, new Readers(file), writer, today);
        } catch (SQLException e) {
            lock.close();
            throw Database.damaged(file, e);
        } catch (RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    private Books toRead(@Nullable LocalDate today) {
        Readers readers = new Readers(file);
        int shape = readers.read(query -> (int) query.number("pragma user_version"));
        if (shape > Migrations.SHAPE) {
            readers.close();
            throw new ShopUnavailable(file + " was written by a newer Hornbook: use that one");
        }
        return new Books(folder, null, readers, null, today);
    }
}
