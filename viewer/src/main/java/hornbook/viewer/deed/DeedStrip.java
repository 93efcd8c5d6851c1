package hornbook.viewer.deed;

import hornbook.shared.store.Deed;
import hornbook.viewer.widget.Words;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** One line below everything: what was done, and the button that takes it back. */
public final class DeedStrip extends HBox {
    private final DeedModel model;
    private final Label words = Words.text("", "deed-words");
    private final Button undo = new Button("Take back  Ctrl+Z");
    private final MenuButton earlier = new MenuButton("Earlier");

    public DeedStrip(DeedModel model) {
        this.model = model;
        getStyleClass().add("deed-strip");
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        undo.setId("take-back");
        undo.setMinWidth(Region.USE_PREF_SIZE);
        undo.setFocusTraversable(false);
        earlier.setMinWidth(Region.USE_PREF_SIZE);
        earlier.setFocusTraversable(false);
        earlier.setAccessibleText("What was done earlier");
        getChildren().addAll(words, undo, earlier);
        model.onChange(this::draw);
    }

    private void draw(DeedView view) {
        boolean said = !view.words().isEmpty();
        setVisible(said);
        setManaged(said);
        words.setText(view.words());
        getStyleClass().remove("trouble");
        if (view.trouble()) {
            getStyleClass().add("trouble");
        }
        Deed last = view.last();
        undo.setDisable(last == null || last.undoneBy() != null);
        undo.setText(last != null && last.undoOf() != null ? "Do it again" : "Take back  Ctrl+Z");
        undo.setAccessibleText(last == null ? "Take back" : "Take back: " + last.title());
        if (last != null) {
            undo.setOnAction(pressed -> model.undo(last));
        }
        earlier.getItems().setAll(view.earlier().stream().map(this::item).toList());
        earlier.setDisable(view.earlier().isEmpty());
    }

    private MenuItem item(Deed deed) {
        MenuItem item =
                new MenuItem(deed.day() + "  " + deed.title() + (deed.undoneBy() == null ? "" : "  (taken back)"));
        item.setDisable(deed.undoneBy() != null);
        item.setOnAction(pressed -> model.undo(deed));
        return item;
    }
}
