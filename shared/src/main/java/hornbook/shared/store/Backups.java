package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;

/** Copies of the books, taken while they are open. */
final class Backups {
    private Backups() {}

    /** A dated copy before the file's shape is changed, named after the shape it had. */
    static Path copyBefore(Query query, Path folder, int shape) throws SQLException {
        String day = LocalDateTime.now().format(DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss"));
        try {
            Path backups = Files.createDirectories(folder.resolve("backups"));
            Path copy = backups.resolve("shape-" + shape + "-" + day + ".db");
            Path aside = backups.resolve("." + copy.getFileName() + ".part");
            Files.deleteIfExists(aside);
            query.run("vacuum into '" + aside.toString().replace("'", "''") + "'");
            SafeFiles.rename(aside, copy);
            return copy;
        } catch (IOException e) {
            throw new ShopUnavailable(
                    "the copy of the books before their shape changes cannot be written in " + folder
                            + ": make room or check its permissions; nothing was changed",
                    e);
        }
    }
}
