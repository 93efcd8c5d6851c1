package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Shape;
import hornbook.catalogue.edit.Spot;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import tools.jackson.databind.JsonNode;

/** Any number of the same, line by line. */
final class LineList extends VBox {
    private final FormMaker maker;
    private final Shape each;
    private final Spot list;

    LineList(FormMaker maker, Shape each, Spot list, String title) {
        this.maker = maker;
        this.each = each;
        this.list = list;
        getStyleClass().add("line-list");
        JsonNode lines = maker.at(list);
        int count = lines == null ? 0 : lines.size();
        for (int place = 1; place <= count; place++) {
            getChildren().add(line(list.then(place), title + " " + place));
        }
        Button add = new Button(count == 0 ? "Add" : "Add another");
        add.setId("add-" + list.dotted());
        add.setAccessibleText("Add to " + title);
        add.setOnAction(pressed -> add(count + 1));
        getChildren().add(add);
    }

    private Node line(Spot spot, String title) {
        Runnable out = () -> {
            maker.folds().closeWithin(list);
            maker.model().takeOut(spot);
        };
        Node line = Lines.folds(each)
                ? new Fold(maker, each, spot, "", out)
                : Lines.beside(maker.editor(each, spot, title), Lines.out(out, title));
        return maker.row("", "", spot, line);
    }

    private void add(int place) {
        Spot spot = list.then(place);
        if (Lines.folds(each)) {
            maker.folds().open(spot);
        } else {
            maker.folds().next(spot);
        }
        maker.model().add(list, Lines.blank(each));
    }
}
