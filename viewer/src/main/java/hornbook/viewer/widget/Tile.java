package hornbook.viewer.widget;

import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;

/**
 * A broad button with several things on it, whose words break into lines; the toolkit's own buttons do not give their
 * content room to do so. Pressed by finger, Enter, space or a screen reader.
 */
public class Tile extends HBox {
    private final Runnable act;

    public Tile(Runnable act, Node... face) {
        super(face);
        this.act = act;
        getStyleClass().add("tile");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setOnMouseClicked(click -> {
            if (click.getButton() == MouseButton.PRIMARY) {
                requestFocus();
                act.run();
            }
        });
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    }

    private void pressed(KeyEvent key) {
        if (key.getCode() == KeyCode.ENTER || key.getCode() == KeyCode.SPACE) {
            act.run();
            key.consume();
        }
    }

    /** Presses it. */
    public void fire() {
        act.run();
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        if (action == AccessibleAction.FIRE) {
            act.run();
        } else {
            super.executeAccessibleAction(action, parameters);
        }
    }
}
