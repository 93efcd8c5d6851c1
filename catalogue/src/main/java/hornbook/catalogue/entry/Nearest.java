package hornbook.catalogue.entry;

import java.util.Collection;
import java.util.Optional;

/** The name that was probably meant: the fewest letters changed, at most a third of them. */
public final class Nearest {
    private Nearest() {}

    /** The nearest of the known names, if it is near enough to have been meant; of two alike the first by letters. */
    public static Optional<String> of(String typed, Collection<String> known) {
        int most = Math.max(1, typed.length() / 3);
        String nearest = null;
        for (String name : known) {
            boolean possible = Math.abs(name.length() - typed.length()) <= most;
            int far = possible ? distance(typed, name) : Integer.MAX_VALUE;
            if (far < most || (far == most && (nearest == null || name.compareTo(nearest) < 0))) {
                nearest = name;
                most = far;
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** Letters put in, left out or changed (Levenshtein 1966). */
    public static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int kept = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(kept, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
