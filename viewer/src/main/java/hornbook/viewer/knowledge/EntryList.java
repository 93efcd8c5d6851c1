package hornbook.viewer.knowledge;

import hornbook.viewer.widget.Words;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The entries of a kind. The arrow keys open one after the other. */
final class EntryList extends ListView<Line> {
    private boolean showing;

    EntryList(Consumer<String> open) {
        setId("entries");
        getStyleClass().add("entries");
        setAccessibleText("Entries");
        setPlaceholder(Words.text("Nothing bears these words. Take some away, or write a new one.", "quiet"));
        setCellFactory(list -> new Cell());
        getSelectionModel().selectedItemProperty().addListener((of, before, now) -> {
            if (now != null && !showing) {
                open.accept(now.id());
            }
        });
    }

    void show(List<Line> lines, @Nullable String open) {
        showing = true;
        if (!getItems().equals(lines)) {
            getItems().setAll(lines);
        }
        lines.stream()
                .filter(line -> line.id().equals(open))
                .findFirst()
                .ifPresentOrElse(line -> select(line), () -> getSelectionModel().clearSelection());
        showing = false;
    }

    private void select(Line line) {
        if (!line.equals(getSelectionModel().getSelectedItem())) {
            getSelectionModel().select(line);
            scrollTo(line);
        }
    }

    private static final class Cell extends ListCell<Line> {
        @Override
        protected void updateItem(@Nullable Line line, boolean empty) {
            super.updateItem(line, empty);
            setText(null);
            if (line == null || empty) {
                setGraphic(null);
                return;
            }
            Label title = Words.text(line.title(), "entry-title");
            VBox face = new VBox(title);
            if (line.own()) {
                face.getChildren().add(Words.text("the shop's own", "own-mark"));
            }
            face.setAlignment(Pos.CENTER_LEFT);
            setPrefWidth(0);
            setGraphic(face);
            setAccessibleText(line.title() + (line.own() ? ", the shop's own" : ""));
        }
    }
}
