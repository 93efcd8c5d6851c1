package hornbook.viewer.knowledge;

import hornbook.catalogue.entry.Kind;
import hornbook.viewer.widget.Words;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** The kinds of entry, each with how many there are. The arrow keys go from one to the next. */
final class KindList extends ListView<Kind> {
    private KnowledgeView view = KnowledgeView.START;
    private boolean showing;

    KindList(Consumer<Kind> choose) {
        setId("kinds");
        getStyleClass().add("kinds");
        setAccessibleText("Kinds of entry");
        getItems().setAll(List.of(Kind.values()));
        setCellFactory(list -> new Cell());
        getSelectionModel().selectedItemProperty().addListener((of, before, now) -> {
            if (now != null && !showing) {
                choose.accept(now);
            }
        });
    }

    void show(KnowledgeView now) {
        boolean counted = !now.counts().equals(view.counts());
        view = now;
        showing = true;
        if (now.kind() == null) {
            getSelectionModel().clearSelection();
        } else if (now.kind() != getSelectionModel().getSelectedItem()) {
            getSelectionModel().select(now.kind());
        }
        showing = false;
        if (counted) {
            refresh();
        }
    }

    private final class Cell extends ListCell<Kind> {
        @Override
        protected void updateItem(@Nullable Kind kind, boolean empty) {
            super.updateItem(kind, empty);
            setText(null);
            if (kind == null || empty) {
                setGraphic(null);
                return;
            }
            Label name = Words.text(KindNames.many(kind), "kind-name");
            HBox.setHgrow(name, Priority.ALWAYS);
            name.setMaxWidth(Double.MAX_VALUE);
            Label count = new Label(Integer.toString(view.counts().getOrDefault(kind, 0)));
            count.getStyleClass().add("quiet");
            count.setMinWidth(Region.USE_PREF_SIZE);
            HBox face = new HBox(name, count);
            face.setAlignment(Pos.CENTER_LEFT);
            setPrefWidth(0);
            setGraphic(face);
            setAccessibleText(name.getText() + ", " + count.getText());
        }
    }
}
