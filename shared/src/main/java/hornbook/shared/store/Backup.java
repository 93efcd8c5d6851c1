package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.sqlite.SQLiteConnection;

/** A copy of the whole shop in one dated file, taken while the shop is in use, and checked before it counts. */
public final class Backup {
    static final String FOLDER = "backups";

    private final Path folder;

    public Backup(Path folder) {
        this.folder = folder;
    }

    /** What was written: the file, its size in bytes, and how many files it holds. */
    public record Answer(Path file, long bytes, int files) {}

    /**
     * Makes a backup named after the day; never writes over an earlier one.
     *
     * @throws ShopUnavailable where the books are damaged or there is no room; nothing stays behind then
     */
    public Answer make(LocalDate day) {
        Path backups = folder.resolve(FOLDER);
        Path books = backups.resolve(".books." + ProcessHandle.current().pid() + ".part");
        Path zip = backups.resolve(".backup." + ProcessHandle.current().pid() + ".part");
        try {
            Files.createDirectories(backups);
            try {
                copy(books);
                refuseIfWrong(books);
                int files = new BackupFile(folder).write(books, day, zip);
                return new Answer(name(zip, backups, day), Files.size(zip), files);
            } finally {
                Files.deleteIfExists(books);
                Files.deleteIfExists(zip);
            }
        } catch (IOException | SQLException e) {
            throw new ShopUnavailable(
                    "the backup cannot be written in " + backups + ": make room or check its permissions", e);
        }
    }

    /** The pages of one moment; the writer goes on meanwhile. */
    private void copy(Path to) throws SQLException {
        try (Query query = new Query(Database.toRead(folder.resolve(Opening.FILE)))) {
            query.run("begin");
            query.number("select count(*) from deed");
            int code = ((SQLiteConnection) query.connection()).getDatabase().backup("main", to.toString(), null);
            if (code != 0) {
                throw new SQLException("backup ended with " + code);
            }
            query.run("rollback");
        }
    }

    private static void refuseIfWrong(Path books) {
        List<Problem> problems = Check.ofCopy(books);
        if (!problems.isEmpty()) {
            throw new ShopUnavailable("no backup was made, as the books are damaged: "
                    + problems.getFirst().what() + ": run “hornbook check”");
        }
    }

    /** A link fails where there is such a file already, in one step; a rename would write over it. */
    private static Path name(Path zip, Path backups, LocalDate day) throws IOException {
        for (int n = 1; ; n++) {
            Path named = backups.resolve("shop-" + day + (n == 1 ? "" : "-" + n) + ".zip");
            try {
                link(named, zip);
                SafeFiles.sync(backups);
                return named;
            } catch (FileAlreadyExistsException e) {
                // That one is an earlier backup; the next number then.
            }
        }
    }

    private static void link(Path named, Path zip) throws IOException {
        try {
            Files.createLink(named, zip);
        } catch (UnsupportedOperationException e) {
            Files.copy(zip, named);
        }
    }

    /** The newest backup whose files are all there and unchanged. */
    public static Optional<Path> lastGood(Path folder) {
        try (Stream<Path> files = Files.list(folder.resolve(FOLDER))) {
            return files.filter(f -> f.getFileName().toString().matches("shop-.*\\.zip"))
                    .sorted(Comparator.comparingLong(Backup::made).reversed())
                    .filter(BackupFile::whole)
                    .findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static long made(Path file) {
        try {
            return Files.getLastModifiedTime(file).toMillis();
        } catch (IOException e) {
            return 0;
        }
    }
}
