package hornbook.viewer.window;

import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/**
 * Where the screens hang, one in view. The others stay, unseen and without room: a screen that was taken away would be
 * dressed in its colours anew when it comes back.
 */
final class InView extends StackPane {
    InView() {
        getStyleClass().add("in-view");
    }

    void show(Node screen) {
        if (!getChildren().contains(screen)) {
            getChildren().add(screen);
        }
        getChildren().forEach(each -> {
            each.setManaged(each == screen);
            each.setVisible(each == screen);
        });
    }

    /** Whether a node is part of a screen, in view or not. */
    boolean holds(Node node) {
        Node above = node;
        while (above != null && above != this) {
            above = above.getParent();
        }
        return above != null;
    }
}
