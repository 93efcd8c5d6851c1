package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** Puts a backup in place of the shop as it is, which is kept aside whole. */
public final class Restore {
    private final Path folder;

    public Restore(Path folder) {
        this.folder = folder;
    }

    /** What was restored: how many files, the backup's day, and where the shop as it was is kept. */
    public record Answer(int files, String day, Path keptAside) {}

    /**
     * Unpacks and checks everything first; the shop is touched only when all of it is good.
     *
     * @throws BadInput where the file is no good backup
     * @throws ShopUnavailable where another Hornbook writes in the shop, or there is no room
     */
    public Answer from(Path zip) {
        if (!Files.isRegularFile(zip)) {
            throw new BadInput(zip + " is no file: name a backup, as those in " + folder.resolve(Backup.FOLDER));
        }
        String now = LocalDateTime.now().format(DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss-SSS"));
        Path stage = folder.resolve(".restore-" + now);
        Path aside = folder.resolve("kept-aside").resolve("before-restore-" + now);
        try {
            Files.createDirectories(stage);
            try (WriterLock lock = lock()) {
                assert lock != null;
                Manifest manifest = unpack(zip, stage);
                Swap.begin(folder, stage, aside);
                return new Answer(manifest.files().size(), manifest.day(), aside);
            } finally {
                Swap.remove(stage);
            }
        } catch (IOException e) {
            throw new ShopUnavailable(
                    "the backup cannot be put in place in " + folder + ": make room or check its permissions", e);
        }
    }

    private WriterLock lock() {
        return WriterLock.take(folder)
                .orElseThrow(() -> new ShopUnavailable(
                        "the shop in " + folder + " is held by another Hornbook that writes: close that one first"));
    }

    private static Manifest unpack(Path zip, Path stage) throws IOException {
        try {
            Manifest manifest = new BackupReader(zip).unpack(stage);
            for (String below : List.of(Opening.ENTRIES, PhotoCheck.FOLDER)) {
                Files.createDirectories(stage.resolve(below));
            }
            // Brings an older shape to today's, on the copy.
            Books.open(stage, Access.WRITE).close();
            List<Problem> problems = Check.ofCopy(stage.resolve(Opening.FILE));
            if (!problems.isEmpty()) {
                throw new BadInput(zip + ": the books in it are damaged: "
                        + problems.getFirst().what() + ": choose another backup");
            }
            return manifest;
        } catch (BackupReader.Unfit e) {
            throw new BadInput(zip + " " + e.why() + ": choose another backup");
        }
    }
}
