package hornbook.viewer.widget;

import javafx.scene.layout.VBox;

/** A drawer's label in its brass frame, with where the drawer is below: read from two steps away. */
public final class Plate extends VBox {
    /**
     * @param label as written; blank where there is none
     * @param where piece of furniture and spot in it; may be blank
     */
    public Plate(String label, String where) {
        getStyleClass().add("place");
        getChildren().add(Words.text(label.isBlank() ? "no label" : label, "label-plate"));
        if (!where.isBlank()) {
            getChildren().add(Words.text(where, "where"));
        }
    }
}
