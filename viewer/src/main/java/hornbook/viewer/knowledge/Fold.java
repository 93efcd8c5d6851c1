package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Shape;
import hornbook.catalogue.edit.Spot;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tools.jackson.databind.JsonNode;

/** A group of fields that is one line until it is opened. */
final class Fold extends VBox {
    private final Node entrance;

    /**
     * @param name what it goes by; blank where it has no name
     * @param out takes it out
     */
    Fold(FormMaker maker, Shape shape, Spot spot, String name, Runnable out) {
        getStyleClass().add("fold");
        boolean open = maker.folds().isOpen(spot);
        JsonNode now = maker.at(spot);
        String summary = open || now == null ? "" : Summary.of(now);
        String words = name.isBlank() ? summary : summary.isBlank() ? name : name + ":  " + summary;
        String shown = (open ? "\u25be  " : "\u25b8  ") + (words.isBlank() ? "to be filled in" : words);
        Tile head = new Tile(() -> maker.folds().turn(spot), Words.text(shown, "words"));
        head.getStyleClass().add("link");
        head.setAccessibleText((open ? "Close " : "Open ") + words);
        HBox.setHgrow(head, Priority.ALWAYS);
        Button take = Lines.out(out, words);
        HBox line = new HBox(head, take);
        line.getStyleClass().add("list-line");
        getChildren().add(line);
        if (open) {
            Node inside = maker.editor(shape, spot, name);
            inside.getStyleClass().add("fold-inside");
            getChildren().add(inside);
            entrance = inside;
        } else {
            entrance = head;
        }
    }

    /** Where the keyboard goes in: the fields, where they show. */
    Node entrance() {
        return entrance;
    }
}
