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

    /** Letters put in, left out, changed (Levenshtein 1966), or swapped with their neighbour (Damerau 1964). */
    public static int distance(String a, String b) {
        int[] twoBack = new int[b.length() + 1];
        int[] back = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            back[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int kept = back[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(kept, 1 + Math.min(back[j], row[j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    row[j] = Math.min(row[j], 1 + twoBack[j - 2]);
                }
            }
            twoBack = back;
            back = row;
        }
        return back[b.length()];
    }
}
