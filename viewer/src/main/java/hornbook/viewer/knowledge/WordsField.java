package hornbook.viewer.knowledge;

import javafx.event.Event;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** A field for a sentence or several: it grows with them. Tab and Enter go on to the next field. */
final class WordsField extends TextArea {
    private static final int MOST_ROWS = 9;
    private static final double LETTER_IN_TYPE = 0.52;
    private static final int FEWEST_LETTERS = 20;

    WordsField() {
        setWrapText(true);
        setPrefRowCount(1);
        getStyleClass().add("words-field");
        textProperty().addListener((of, before, now) -> grow());
        widthProperty().addListener((of, before, now) -> grow());
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    private void grow() {
        int fit = (int) Math.max(FEWEST_LETTERS, getWidth() / (getFont().getSize() * LETTER_IN_TYPE));
        int rows = getText().lines().mapToInt(line -> 1 + line.length() / fit).sum();
        setPrefRowCount(Math.clamp(rows, 1, MOST_ROWS));
    }

    private void pressed(KeyEvent key) {
        boolean on = key.getCode() == KeyCode.TAB || key.getCode() == KeyCode.ENTER;
        if (on && !key.isControlDown()) {
            key.consume();
            // With Control, an area lets the key move on instead of writing it.
            Event.fireEvent(
                    this,
                    new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, key.isShiftDown(), true, false, false));
        }
    }
}
