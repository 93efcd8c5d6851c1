package hornbook.viewer.window;

import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.Scene;
import org.jspecify.annotations.Nullable;

/**
 * Gives the keyboard to the screen in view when what had it goes away. The toolkit would hand it to whatever field or
 * button comes first, and the next letter would be a search, or written where nobody looks.
 *
 * <p>The toolkit lets go of what went away before it chooses another (the owner is nobody in between); a screen that
 * wants the keyboard somewhere asks for it outright. So whoever got it out of nobody's hands was not asked for.
 */
final class KeyboardKeeper {
    private final InView screens;
    private final Runnable take;
    private final ChangeListener<@Nullable Node> moved = (of, before, now) -> moved(before, now);

    private boolean lost;
    private @Nullable Node stopgap;

    /** @param take gives the keyboard to the screen in view */
    KeyboardKeeper(InView screens, Runnable take) {
        this.screens = screens;
        this.take = take;
        screens.sceneProperty().subscribe(this::watch);
    }

    private void watch(@Nullable Scene before, @Nullable Scene now) {
        if (before != null) {
            before.focusOwnerProperty().removeListener(moved);
        }
        if (now != null) {
            now.focusOwnerProperty().addListener(moved);
        }
    }

    private void moved(@Nullable Node before, @Nullable Node now) {
        if (now == null) {
            boolean first = !lost;
            lost = true;
            stopgap = null;
            if (first) {
                Platform.runLater(this::restore);
            }
        } else if (before == null && lost) {
            stopgap = now;
        } else {
            lost = false;
        }
    }

    private void restore() {
        Scene scene = screens.getScene();
        boolean unasked = lost && scene != null && scene.getFocusOwner() == stopgap;
        lost = false;
        if (unasked) {
            take.run();
        }
    }
}
