package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Spot;
import hornbook.catalogue.edit.Standing;
import hornbook.viewer.widget.Words;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** An entry being written: its form, where it is known from, what it changes, and the way out. */
final class EditPane extends BorderPane {
    private final EditModel model;
    private final FormPane form;
    private final OriginPane origin;
    private final ChangesPane changes;
    private final Label title = Words.text("", "card-title");
    private final Label trouble = Words.text("", "banner");
    private final Button save = new Button("Save");
    private final Button away = new Button("Put away");

    EditPane(EditModel model) {
        this.model = model;
        form = new FormPane(model);
        origin = new OriginPane(model);
        changes = new ChangesPane(form::take);
        getStyleClass().add("edit");
        save.setId("save-entry");
        save.getStyleClass().add("accent");
        save.setAccessibleHelp("Ctrl+S");
        save.setOnAction(pressed -> model.save());
        away.setId("put-away-entry");
        away.setOnAction(pressed -> model.putAway());
        save.setMinWidth(Region.USE_PREF_SIZE);
        away.setMinWidth(Region.USE_PREF_SIZE);
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox head = new HBox(title, save, away);
        head.getStyleClass().add("panel-head");
        setTop(new VBox(head, trouble));
        setCenter(form);
        VBox side = new VBox(origin, changes);
        side.getStyleClass().add("edit-side");
        ScrollPane scroll = new ScrollPane(side);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("side-scroll");
        setRight(scroll);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        model.onChange(this::show);
    }

    private void pressed(KeyEvent key) {
        if (key.getCode() == KeyCode.S && key.isShortcutDown()) {
            key.consume();
            if (model.view().fit()) {
                model.save();
            }
        }
    }

    void takeFirst() {
        form.takeFirst();
    }

    private void show(EditView view) {
        title.setText(heading(view));
        form.show(view);
        origin.show(view);
        changes.show(view);
        save.setDisable(!view.fit());
        away.setText(view.leaving() ? "Put away unsaved" : "Put away");
        String words =
                view.leaving() ? "What you wrote is not saved. Save it, or put it away unsaved." : view.trouble();
        trouble.setText(words);
        trouble.setVisible(!words.isEmpty());
        trouble.setManaged(!words.isEmpty());
    }

    private String heading(EditView view) {
        String name = view.draft().text(Spot.of("title"));
        String kind = KindNames.one(view.draft().kind());
        if (model.fresh()) {
            return "New " + kind + (name.isBlank() ? "" : ": " + name);
        }
        boolean copy = view.proposal() != null && view.proposal().standing() == Standing.OVER_SHIPPED;
        return (copy ? "Own copy of the " + kind + ": " : "The shop's own " + kind + ": ") + name;
    }
}
