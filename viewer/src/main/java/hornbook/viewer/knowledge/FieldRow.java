package hornbook.viewer.knowledge;

import hornbook.viewer.widget.Words;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** A field with what it is called above it, and what is wrong with it below. */
final class FieldRow extends VBox {
    private final Node editor;
    private final Label problem = Words.text("", "field-problem");

    /**
     * @param title blank where it needs none
     * @param about what is to be filled in; may be blank
     */
    FieldRow(String title, String about, Node editor) {
        this.editor = editor;
        getStyleClass().add("field-row");
        if (!title.isBlank()) {
            Label label = Words.text(title, "asks");
            label.setLabelFor(editor);
            getChildren().add(label);
        }
        if (!about.isBlank()) {
            getChildren().add(Words.text(about, "field-about"));
        }
        getChildren().addAll(editor, problem);
        problem("", false);
    }

    /** Says what is wrong; blank where nothing is. */
    void problem(String words, boolean stops) {
        problem.setText(words);
        problem.setVisible(!words.isEmpty());
        problem.setManaged(!words.isEmpty());
        problem.getStyleClass().setAll("label", "field-problem", stops ? "stops" : "remark");
        editor.setAccessibleHelp(words.isEmpty() ? null : words);
    }

    String problem() {
        return problem.getText();
    }

    /** Puts the keyboard into the first thing that takes it. */
    void take() {
        first(editor instanceof Fold fold ? fold.entrance() : editor).requestFocus();
    }

    private static Node first(Node node) {
        if (!node.isFocusTraversable() && node instanceof javafx.scene.Parent parent) {
            for (Node inner : parent.getChildrenUnmodifiable()) {
                Node found = first(inner);
                if (found.isFocusTraversable()) {
                    return found;
                }
            }
        }
        return node;
    }
}
