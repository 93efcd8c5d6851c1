package hornbook.viewer.window;

import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The one box over everything. Arrow keys and Enter go to what was found, so that hands stay on the keyboard. */
final class SearchBox extends HBox {
    private static final int A_PAGE = 8;

    private final TextField field = new TextField();

    SearchBox() {
        getStyleClass().add("search-box");
        field.setPromptText("Part, drawer, horn, size, serial, symptom\u2026");
        field.setAccessibleRole(AccessibleRole.TEXT_FIELD);
        field.setAccessibleText("Search everything");
        field.setAccessibleHelp(
                "Type to search. Up and Down choose a result, Enter opens it, Ctrl+Enter pulls its drawer.");
        field.setId("search");
        HBox.setHgrow(field, Priority.ALWAYS);
        getChildren().addAll(new Icon(Icons.FIND), field);
    }

    void onTyped(Consumer<String> typed) {
        field.textProperty().subscribe((before, now) -> typed.accept(now));
    }

    void guides(Searching screen) {
        field.addEventFilter(KeyEvent.KEY_PRESSED, key -> {
            if (key.isShortcutDown() && !key.isAltDown()) {
                pulling(key, screen);
                return;
            }
            if (key.isAltDown()) {
                return;
            }
            switch (key.getCode()) {
                case DOWN -> screen.step(1);
                case UP -> screen.step(-1);
                case PAGE_DOWN -> screen.step(A_PAGE);
                case PAGE_UP -> screen.step(-A_PAGE);
                case ENTER -> screen.open();
                default -> {
                    return;
                }
            }
            key.consume();
        });
    }

    /** What follows a drawer's pulling is one key less: Ctrl+T takes, Ctrl and a digit counts. */
    private static void pulling(KeyEvent key, Searching screen) {
        boolean digit = key.getCode().isDigitKey() && key.getCode() != KeyCode.DIGIT0;
        if (key.getCode() == KeyCode.ENTER) {
            screen.pull("");
        } else if (key.getCode() == KeyCode.T || digit) {
            screen.pull(key.getCode().getChar().toLowerCase(Locale.ROOT));
        } else {
            return;
        }
        key.consume();
    }

    boolean has(Node node) {
        return node == field;
    }

    boolean hasKeyboard() {
        return field.isFocused();
    }

    String text() {
        return field.getText();
    }

    void clear() {
        field.clear();
    }

    /** Takes the keyboard, with the old text ready to be typed over. */
    void focus() {
        field.requestFocus();
        field.selectAll();
    }
}
