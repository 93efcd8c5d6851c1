package hornbook.catalogue.diagnose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The bare rule, chance / (minutes + set-up not yet made), one check at a time: what the order must beat. */
final class OneAhead {
    private OneAhead() {}

    static List<Check> order(List<Check> checks) {
        List<Check> left = new ArrayList<>(checks);
        Set<String> made = new HashSet<>();
        List<Check> order = new ArrayList<>();
        while (!left.isEmpty()) {
            Check next = left.stream()
                    .max(Comparator.comparingDouble(c -> c.chance()
                            / (c.minutes() + (c.setUp() == null || made.contains(c.setUp()) ? 0 : c.setUpMinutes()))))
                    .orElseThrow();
            order.add(next);
            left.remove(next);
            if (next.setUp() != null) {
                made.add(next.setUp());
            }
        }
        return order;
    }
}
