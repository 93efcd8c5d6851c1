package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Field;
import hornbook.catalogue.edit.Shape;
import hornbook.catalogue.edit.Spot;
import hornbook.viewer.widget.Words;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tools.jackson.databind.JsonNode;

/** Any number of the same, each under a name. */
final class NameList extends VBox {
    private static final String BLANK = "blank";

    private final FormMaker maker;
    private final Shape.ByName shape;
    private final Spot list;

    NameList(FormMaker maker, Shape.ByName shape, Spot list, String title) {
        this.maker = maker;
        this.shape = shape;
        this.list = list;
        getStyleClass().add("line-list");
        JsonNode lines = maker.at(list);
        if (lines != null) {
            lines.propertyNames().forEach(name -> getChildren().add(line(name)));
        }
        getChildren().add(adding(title));
    }

    private Node line(String name) {
        Spot spot = list.then(name);
        Runnable out = () -> maker.model().takeOut(spot);
        String called = maker.model().called(name);
        String shown = called.isEmpty() ? Field.title(name) : called;
        if (Lines.folds(shape.each())) {
            return maker.row("", "", spot, new Fold(maker, shape.each(), spot, shown, out));
        }
        Label label = Words.text(shown, "name-of-line");
        Node editor = maker.editor(shape.each(), spot, shown);
        HBox line = Lines.beside(editor, Lines.out(out, shown));
        line.getChildren().addFirst(label);
        return maker.row("", "", spot, line);
    }

    private Node adding(String title) {
        TextField name = new TextField();
        name.setId("name-" + list.dotted());
        name.setPromptText("another one");
        name.setAccessibleText("Add to " + title);
        Button add = new Button("Add");
        add.setId("add-" + list.dotted());
        add.setMinWidth(Region.USE_PREF_SIZE);
        add.setOnAction(pressed -> add(name.getText().strip()));
        name.setOnAction(entered -> add(name.getText().strip()));
        HBox.setHgrow(name, Priority.ALWAYS);
        HBox line = new HBox(name, add);
        line.getStyleClass().add("list-line");
        return new VBox(
                line,
                new Offers(name, (typed, found) -> maker.model().offer(shape.names(), typed, list.then(typed), found)));
    }

    private void add(String name) {
        if (name.isEmpty() && !shape.names().contains(BLANK)) {
            return;
        }
        Spot spot = list.then(name);
        if (Lines.folds(shape.each())) {
            maker.folds().open(spot);
        } else {
            maker.folds().next(spot);
        }
        maker.model().put(spot, Lines.blank(shape.each()));
    }
}
