package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Puts a staged shop in place of the one there is. A note of it is on the disk first, so that what a crash cut short is
 * finished at the next opening: there is never half of one shop and half of another.
 */
final class Swap {
    private static final String NOTE = "restore.note";
    private static final List<String> PARTS = List.of(Opening.FILE, Opening.ENTRIES, PhotoCheck.FOLDER);

    /** Belong to the old books: a log would be played into the new ones, an index would answer for them. */
    private static final List<String> GONE = List.of(Opening.FILE + "-wal", Opening.FILE + "-shm", "index");

    private Swap() {}

    static void begin(Path folder, Path stage, Path aside) throws IOException {
        try (Stream<Path> files = Files.walk(stage)) {
            for (Path file : files.toList()) {
                SafeFiles.sync(file);
            }
        }
        Files.createDirectories(aside);
        SafeFiles.replace(
                folder.resolve(NOTE),
                (stage.getFileName() + "\n" + aside.getFileName()).getBytes(StandardCharsets.UTF_8));
        finish(folder);
    }

    static boolean underWay(Path folder) {
        return Files.exists(folder.resolve(NOTE));
    }

    /** Finishes what a note tells of; the caller holds the lock. Every step may have been done before. */
    static void finish(Path folder) throws IOException {
        Path note = folder.resolve(NOTE);
        List<String> names = Files.readAllLines(note);
        Path stage = folder.resolve(names.get(0));
        Path aside = folder.resolve("kept-aside").resolve(names.get(1));
        if (Files.exists(stage.resolve(Opening.FILE))) {
            for (String gone : GONE) {
                moveIfThere(folder.resolve(gone), aside.resolve(gone));
            }
        }
        for (String part : PARTS) {
            if (Files.exists(stage.resolve(part))) {
                moveIfThere(folder.resolve(part), aside.resolve(part));
                Files.move(stage.resolve(part), folder.resolve(part));
            }
        }
        SafeFiles.sync(aside);
        SafeFiles.sync(folder);
        Files.delete(note);
        SafeFiles.sync(folder);
        remove(stage);
    }

    private static void moveIfThere(Path from, Path to) throws IOException {
        if (Files.exists(from)) {
            Files.move(from, to);
        }
    }

    /** Finishes a restore that was cut short, whoever opens the shop next. */
    static void finishIfUnderWay(Path folder) {
        if (!underWay(folder)) {
            return;
        }
        Optional<WriterLock> lock = WriterLock.take(folder);
        if (lock.isEmpty()) {
            throw new ShopUnavailable("the shop in " + folder + " is being restored: wait until that is done");
        }
        try (WriterLock held = lock.get()) {
            assert held != null;
            if (underWay(folder)) {
                finish(folder);
            }
        } catch (IOException e) {
            throw new ShopUnavailable(
                    "a restore of " + folder + " was cut short and cannot be finished: make room or check its"
                            + " permissions",
                    e);
        }
    }

    /** What a restore or a backup that was killed left behind; the caller holds the lock. */
    static void sweep(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path left : files.filter(f -> f.getFileName().toString().startsWith(".restore-"))
                    .toList()) {
                remove(left);
            }
        }
    }

    static void remove(Path stage) throws IOException {
        if (!Files.exists(stage)) {
            return;
        }
        try (Stream<Path> files = Files.walk(stage)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }
}
