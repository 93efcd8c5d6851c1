package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Choice;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/** What may be meant by what is typed, below its field: arrow down goes there, Enter takes one. */
final class Offers extends VBox {
    private final TextInputControl field;
    private final BiConsumer<String, Consumer<List<Choice>>> ask;

    /** @param ask given what is typed and who is to be told what is found */
    Offers(TextInputControl field, BiConsumer<String, Consumer<List<Choice>>> ask) {
        this.field = field;
        this.ask = ask;
        getStyleClass().add("offers");
        show(List.of());
        field.textProperty().addListener((of, before, now) -> look());
        field.focusedProperty().addListener((of, before, now) -> {
            if (now) {
                look();
            } else {
                Platform.runLater(this::leave);
            }
        });
        field.addEventFilter(KeyEvent.KEY_PRESSED, key -> pressed(key, -1));
    }

    private void look() {
        if (field.isFocused()) {
            ask.accept(field.getText(), this::show);
        }
    }

    private void leave() {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        if (owner != field && (owner == null || !getChildren().contains(owner))) {
            show(List.of());
        }
    }

    private void show(List<Choice> choices) {
        boolean said = choices.size() == 1 && choices.getFirst().text().equals(field.getText());
        List<Choice> shown = said || !near() ? List.of() : choices;
        getChildren().setAll(shown.stream().map(this::tile).toList());
        setVisible(!shown.isEmpty());
        setManaged(!shown.isEmpty());
    }

    private boolean near() {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        return owner == field || getChildren().contains(owner);
    }

    private Tile tile(Choice choice) {
        String words = choice.title().isBlank() || choice.title().equals(choice.text())
                ? choice.text()
                : choice.title() + "  \u00b7  " + choice.text();
        Tile tile = new Tile(() -> take(choice), Words.text(words, "words"));
        tile.getStyleClass().addAll("link", "offer");
        tile.setAccessibleText(words);
        tile.addEventHandler(
                KeyEvent.KEY_PRESSED, key -> pressed(key, getChildren().indexOf(tile)));
        tile.focusedProperty().addListener((of, before, now) -> Platform.runLater(this::leave));
        return tile;
    }

    private void take(Choice choice) {
        field.requestFocus();
        field.setText(choice.text());
        field.end();
        show(List.of());
    }

    private void pressed(KeyEvent key, int at) {
        if (getChildren().isEmpty()) {
            return;
        }
        switch (key.getCode()) {
            case DOWN ->
                getChildren().get(Math.min(at + 1, getChildren().size() - 1)).requestFocus();
            case UP -> (at > 0 ? getChildren().get(at - 1) : field).requestFocus();
            case ESCAPE -> {
                field.requestFocus();
                show(List.of());
            }
            default -> {
                return;
            }
        }
        if (key.getCode() != KeyCode.UP || at >= 0) {
            key.consume();
        }
    }
}
