package hornbook.viewer.gauges;

import javafx.scene.Node;

/** One of the things that can be asked on this screen. */
interface Pane {
    /** As on its tab. */
    String title();

    Node node();

    /** Puts the keyboard where typing begins. */
    void focus();

    /** Called when it comes into view, or the shop changed while it is. */
    default void shown() {}
}
