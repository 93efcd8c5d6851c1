package hornbook.shared.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** Photos against the SHA-256 that names them. */
final class PhotoCheck {
    static final String FOLDER = "photos";

    private PhotoCheck() {}

    static List<Problem> problems(Query query, Path folder) {
        List<Problem> found = new ArrayList<>();
        query.each("select distinct sha, kept from photo where retired = 0 order by 1", row -> {
            Path file = folder.resolve(FOLDER).resolve(row.getString(1) + "." + row.getString(2));
            if (!Files.exists(file)) {
                found.add(Damage.of("is missing", FOLDER + "/" + file.getFileName()));
            } else if (!sha(file).equals(row.getString(1))) {
                found.add(Damage.of("is no longer the photo it was", FOLDER + "/" + file.getFileName()));
            }
        });
        return found;
    }

    /** SHA-256 of a file, as 64 hexadecimal digits; empty where it cannot be read. */
    static String sha(Path file) {
        MessageDigest digest = Sums.sha256();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(java.io.OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(digest.digest());
        } catch (IOException e) {
            return "";
        }
    }
}
