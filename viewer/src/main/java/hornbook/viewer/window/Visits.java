package hornbook.viewer.window;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Which screen is in view, and the way back. Knows no widget. */
final class Visits {
    private static final int REMEMBERED = 30;

    private final Deque<ScreenName> before = new ArrayDeque<>();
    private final Consumer<ScreenName> show;

    @Nullable
    private ScreenName now;

    /** @param show is told each time another screen comes into view */
    Visits(Consumer<ScreenName> show) {
        this.show = show;
    }

    Optional<ScreenName> now() {
        return Optional.ofNullable(now);
    }

    void go(ScreenName to) {
        if (now == to) {
            return;
        }
        if (now != null) {
            before.push(now);
            if (before.size() > REMEMBERED) {
                before.removeLast();
            }
        }
        now = to;
        show.accept(to);
    }

    /** Goes to the screen before, if there was one. */
    boolean back() {
        if (before.isEmpty()) {
            return false;
        }
        ScreenName to = before.pop();
        now = to;
        show.accept(to);
        return true;
    }
}
