package hornbook.shared.store;

import java.util.List;
import java.util.regex.Pattern;

/**
 * What a backup holds, as its last file tells.
 *
 * @param shape of the books in it
 * @param day by the shop's clock
 */
record Manifest(String holds, int shape, String day, List<Part> files) {
    static final String NAME = "manifest.json";
    static final String HOLDS = "backup of a Hornbook shop";

    private static final Pattern ALLOWED = Pattern.compile(
            "shop\\.db|entries/[a-z0-9-]+/[A-Za-z0-9][A-Za-z0-9.-]*\\.json|photos/[0-9a-f]{64}\\.(jpg|png)");

    /** One file: its path in the shop's folder, its length in bytes, its SHA-256. */
    record Part(String path, long size, String sha256) {
        boolean allowed() {
            return ALLOWED.matcher(path).matches() && size >= 0;
        }
    }
}
