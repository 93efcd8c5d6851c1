package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Shape;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** What lists of lines and of names have alike. */
final class Lines {
    private Lines() {}

    /** Whether such lines are folded: what has fields of its own would fill the form. */
    static boolean folds(Shape each) {
        return each instanceof Shape.Group || each instanceof Shape.ByName || each instanceof Shape.ListOf;
    }

    /** What a new line holds. */
    static JsonNode blank(Shape each) {
        return each instanceof Shape.Group || each instanceof Shape.ByName
                ? JsonNodeFactory.instance.objectNode()
                : JsonNodeFactory.instance.stringNode("");
    }

    static Button out(Runnable act, String what) {
        Button out = new Button("Take out");
        out.setAccessibleText("Take out " + what);
        out.setMinWidth(Region.USE_PREF_SIZE);
        out.setOnAction(pressed -> act.run());
        return out;
    }

    static HBox beside(Node editor, Button out) {
        HBox.setHgrow(editor, Priority.ALWAYS);
        HBox line = new HBox(editor, out);
        line.getStyleClass().add("list-line");
        return line;
    }
}
