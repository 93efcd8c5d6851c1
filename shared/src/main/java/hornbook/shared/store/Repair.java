package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Mends what can be mended without guessing: counts, indexes, entry files. The file as it was found is kept aside first.
 * Content that changed by itself is not mended; the last good backup is offered for that.
 */
public final class Repair {
    private final Path folder;
    private final Path file;
    private final List<String> done = new ArrayList<>();

    public Repair(Path folder) {
        this.folder = folder;
        this.file = folder.resolve(Opening.FILE);
    }

    /** @throws ShopUnavailable where another Hornbook writes in the shop */
    public Check.Report run() {
        Check check = new Check(folder);
        List<Problem> problems = check.problems();
        if (!problems.isEmpty()) {
            keepAside();
            if (problems.stream().noneMatch(p -> p.where().equals(file.toString()))) {
                mend(problems);
            }
            problems = check.problems();
        }
        return Check.Report.of(problems, done);
    }

    /** Copied with no connection open here: closing a plain channel would take SQLite's locks from under it. */
    private void keepAside() {
        WriterLock lock = WriterLock.take(folder)
                .orElseThrow(() -> new ShopUnavailable(
                        "the shop in " + folder + " is held by another Hornbook that writes: close that one first"));
        try (lock) {
            String now = LocalDateTime.now().format(DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss-SSS"));
            Path aside = Files.createDirectories(folder.resolve("kept-aside").resolve("found-" + now));
            for (String suffix : List.of("", "-wal")) {
                Path part = folder.resolve(Opening.FILE + suffix);
                if (Files.exists(part)) {
                    Files.copy(part, aside.resolve(Opening.FILE + suffix));
                }
            }
            done.add("the books as they were found are kept in " + aside);
        } catch (IOException e) {
            throw new ShopUnavailable(
                    "the books as found cannot be kept aside in " + folder + ": make room; nothing was changed", e);
        }
    }

    private void mend(List<Problem> problems) {
        try {
            if (problems.stream().anyMatch(p -> p.toDo().contains("index anew"))) {
                directly(query -> query.run("reindex"));
                done.add("the indexes were made anew");
            }
            if (problems.stream().anyMatch(p -> p.toDo().contains("ledger again"))) {
                directly(Balances::countAgain);
                done.add("the counts were taken from the ledger again");
            }
            entries();
            if (problems.stream().anyMatch(Overdrawn::is)) {
                overdrawn();
            }
        } catch (SQLException | ShopUnavailable e) {
            done.add("no more could be mended, as the file is torn");
        }
    }

    private void overdrawn() throws SQLException {
        try (Query query = new Query(Database.toRead(file));
                Books books = Books.open(folder, Access.WRITE)) {
            done.addAll(Overdrawn.repair(query, books));
        }
    }

    private interface Work {
        void on(Query query) throws SQLException;
    }

    private void directly(Work work) throws SQLException {
        try (WriterLock lock = WriterLock.take(folder).orElseThrow(() -> new ShopUnavailable("held by another"));
                Query query = new Query(Database.toWrite(file))) {
            assert lock != null;
            query.run("begin immediate");
            work.on(query);
            query.run("commit");
        }
    }

    private void entries() throws SQLException {
        EntryFiles files = new EntryFiles(folder.resolve(Opening.ENTRIES));
        EntryCheck check;
        try (Query query = new Query(Database.toRead(file))) {
            check = new EntryCheck(query, folder);
        }
        Map<String, EntryCheck.Fate> differ = check.differ();
        List<String> byHand = new ArrayList<>();
        differ.forEach((path, fate) -> {
            if (fate == EntryCheck.Fate.BY_HAND) {
                byHand.add(path);
            } else if (check.kept(path).isPresent()) {
                files.prepare(path, check.kept(path).get());
                files.put(path, check.kept(path).get());
                done.add("entries/" + path + " was put back as the books have it");
            }
        });
        if (!byHand.isEmpty()) {
            try (Books books = Books.open(folder, Access.WRITE)) {
                books.write("take entries changed by hand", w -> byHand.forEach(w::adopt));
            }
            byHand.forEach(path -> done.add("entries/" + path + " was taken as it was changed by hand"));
        }
    }
}
