package hornbook.viewer.gauges;

import hornbook.viewer.widget.Words;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** A field with what it asks for above it; told of every key. */
final class AskField extends VBox {
    private final TextField field = new TextField();

    /** @param prompt how it may be written */
    AskField(String id, String asks, String prompt, Consumer<String> typed) {
        getStyleClass().add("ask-field");
        Label label = Words.text(asks, "asks");
        field.setId(id);
        field.setPromptText(prompt);
        field.setAccessibleText(asks);
        label.setLabelFor(field);
        field.textProperty().addListener((of, before, now) -> typed.accept(now));
        getChildren().addAll(label, field);
    }

    /** Writes in it, as if it had been typed. */
    void set(String text) {
        if (!field.getText().equals(text)) {
            field.setText(text);
        }
    }

    void focus() {
        field.requestFocus();
    }

    /** Shows it, or hides it and takes no room. */
    void ask(boolean wanted) {
        setVisible(wanted);
        setManaged(wanted);
    }
}
