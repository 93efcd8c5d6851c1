package hornbook.viewer.pick;

import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.List;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * Shows a choice. While nothing is typed a digit takes its option at once; letters narrow the list, the arrows go through
 * it, Enter takes the lit one, Esc leaves.
 */
public final class PickPane extends VBox {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final int SHOWN = 9;
    private static final int ACROSS = 3;
    /** Under this many times the height of type a pane has two options abreast, that words have room. */
    private static final double NARROW = 55;

    private final Consumer<String> chosen;
    private final Runnable leave;
    private final Label title = Words.text("", "ask-title");
    private final TextField field = new TextField();
    private final Label trouble = Words.text("", "heed");
    private final GridPane grid = new GridPane();

    private Consumer<String> typed = text -> {};
    private @Nullable Pick pick;
    private int at;

    /** @param chosen told the value of what was chosen */
    public PickPane(Consumer<String> chosen, Runnable leave) {
        this.chosen = chosen;
        this.leave = leave;
        getStyleClass().add("pick-pane");
        field.setId("pick-field");
        field.setPrefColumnCount(12);
        field.setMinWidth(USE_PREF_SIZE);
        field.setAccessibleHelp("A digit takes that one; letters narrow the list; Enter takes the lit one, Esc leaves");
        field.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        field.addEventFilter(KeyEvent.KEY_TYPED, this::digit);
        field.textProperty().subscribe((before, now) -> {
            at = 0;
            typed.accept(now);
            draw();
        });
        Button away = new Button("Leave it");
        away.setAccessibleHelp("Esc");
        away.setMinWidth(USE_PREF_SIZE);
        away.setFocusTraversable(false);
        away.setOnAction(pressed -> leave.run());
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox head = new HBox(title, field, away);
        head.getStyleClass().add("panel-head");
        grid.getStyleClass().add("pick-grid");
        getChildren().addAll(head, trouble, grid);
        setMinHeight(USE_PREF_SIZE);
        widthProperty().subscribe(this::draw);
        show(null);
    }

    /** Told what is typed, where the options come from elsewhere. */
    public void onTyped(Consumer<String> told) {
        typed = told;
    }

    /** Shows a choice with the keyboard in it, or nothing. */
    public void show(@Nullable Pick now) {
        boolean fresh = now != null && (pick == null || !pick.title().equals(now.title()));
        pick = now;
        setVisible(now != null);
        setManaged(now != null);
        if (fresh) {
            field.clear();
            at = 0;
        }
        draw();
        if (fresh) {
            field.requestFocus();
        }
    }

    private List<Option> shown() {
        return pick == null
                ? List.of()
                : pick.options().stream()
                        .filter(option -> pick.searched() || option.has(field.getText()))
                        .limit(SHOWN)
                        .toList();
    }

    private void draw() {
        if (pick == null) {
            return;
        }
        title.setText(pick.title());
        field.setAccessibleText(pick.title());
        String why = pick.trouble();
        trouble.setText(why == null ? "" : why);
        trouble.setVisible(why != null);
        trouble.setManaged(why != null);
        grid.getChildren().clear();
        List<Option> options = shown();
        int across = getWidth() < NARROW * title.getFont().getSize() ? ACROSS - 1 : ACROSS;
        abreast(across);
        int down = (options.size() + across - 1) / across;
        for (int i = 0; i < options.size(); i++) {
            grid.add(tile(options.get(i), i), down == 0 ? 0 : i / Math.max(1, down), i % Math.max(1, down));
        }
        if (options.isEmpty()) {
            grid.add(Words.text("Nothing like that.", "quiet"), 0, 0);
        }
    }

    private void abreast(int across) {
        if (grid.getColumnConstraints().size() != across) {
            grid.getColumnConstraints().clear();
            for (int i = 0; i < across; i++) {
                ColumnConstraints column = new ColumnConstraints();
                column.setPercentWidth(100.0 / across);
                grid.getColumnConstraints().add(column);
            }
        }
    }

    private Node tile(Option option, int place) {
        Label digit = new Label(Integer.toString(place + 1));
        digit.getStyleClass().add("pick-digit");
        digit.setMinWidth(USE_PREF_SIZE);
        Label words = Words.text(option.words(), "pick-words");
        VBox face = new VBox(words);
        if (!option.note().isBlank()) {
            face.getChildren().add(Words.text(option.note(), "quiet"));
        }
        Tile tile = new Tile(() -> chosen.accept(option.value()), face);
        if (pick != null && pick.numbered()) {
            tile.getChildren().addFirst(digit);
        }
        tile.getStyleClass().addAll("link", "pick-tile");
        tile.setId("pick-" + (place + 1));
        tile.pseudoClassStateChanged(CHOSEN, place == at);
        tile.setAccessibleText((place + 1) + ": " + option.words() + " " + option.note());
        GridPane.setHgrow(tile, Priority.ALWAYS);
        tile.setMaxWidth(Double.MAX_VALUE);
        return tile;
    }

    private void digit(KeyEvent key) {
        String sign = key.getCharacter();
        boolean numbered = pick != null && pick.numbered();
        if (numbered
                && field.getText().isEmpty()
                && sign.length() == 1
                && sign.charAt(0) >= '1'
                && sign.charAt(0) <= '9') {
            key.consume();
            take(sign.charAt(0) - '1');
        }
    }

    private void take(int place) {
        List<Option> options = shown();
        if (place >= 0 && place < options.size()) {
            chosen.accept(options.get(place).value());
        }
    }

    private void pressed(KeyEvent key) {
        KeyCode code = key.getCode();
        switch (code) {
            case DOWN -> at = Math.min(at + 1, Math.max(0, shown().size() - 1));
            case UP -> at = Math.max(0, at - 1);
            case ENTER -> take(at);
            case ESCAPE -> leave.run();
            default -> {
                return;
            }
        }
        key.consume();
        draw();
    }
}
