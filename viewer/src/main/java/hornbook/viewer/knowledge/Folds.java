package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Spot;
import java.util.HashSet;
import java.util.Set;

/** Which groups of a form lie open, and where the keyboard is to go when the form is next laid out. */
final class Folds {
    private final Set<String> open = new HashSet<>();
    private final Runnable again;
    private String next = "";

    /** @param again lays the form out anew */
    Folds(Runnable again) {
        this.again = again;
    }

    boolean isOpen(Spot spot) {
        return open.contains(spot.dotted());
    }

    void open(Spot spot) {
        open.add(spot.dotted());
        next(spot);
    }

    void turn(Spot spot) {
        if (!open.remove(spot.dotted())) {
            open.add(spot.dotted());
        }
        next(spot);
        again.run();
    }

    /** Closes what lies in a list, whose places no longer mean what they meant. */
    void closeWithin(Spot list) {
        open.removeIf(spot -> spot.startsWith(list.dotted() + "."));
    }

    void next(Spot spot) {
        next = spot.dotted();
    }

    /** Where the keyboard is to go; empty where it may stay. */
    String takeNext() {
        String now = next;
        next = "";
        return now;
    }
}
