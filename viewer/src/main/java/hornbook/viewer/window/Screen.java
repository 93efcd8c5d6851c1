package hornbook.viewer.window;

import java.util.Set;
import javafx.scene.Node;

/** One screen of the window. All is called on the JavaFX thread. */
public interface Screen {
    ScreenName name();

    /** What is shown; the same node each time. */
    Node node();

    /** Called whenever it comes into view: the moment to ask again. */
    default void shown() {}

    /** Called when the keyboard is the screen's and nothing on it asked for it: puts it where a person would begin. */
    default void takeKeyboard() {
        node().requestFocus();
    }

    /**
     * Called while it is in view and the shop has changed under it.
     *
     * @param kinds the kinds of record that changed, as {@code find} names them
     */
    default void changed(Set<String> kinds) {
        shown();
    }

    /**
     * Called when the person steps back.
     *
     * @return whether the screen had something of its own to step back from
     */
    default boolean back() {
        return false;
    }
}
