package hornbook.viewer.diagnose;

import hornbook.catalogue.diagnose.DiagnoseAnswer;
import hornbook.catalogue.diagnose.DiagnoseAnswer.NextCheck;
import hornbook.viewer.diagnose.Told.ToolPlace;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The check to make now: its question, minutes, tools and where they lie, and its three answers. */
final class NextPane extends VBox {
    private final DiagnoseModel model;
    private final Consumer<String> pull;

    /** @param pull shows a drawer in its cabinet */
    NextPane(DiagnoseModel model, Consumer<String> pull, Told told) {
        this.model = model;
        this.pull = pull;
        getStyleClass().add("next-check");
        DiagnoseAnswer answer = told.answer();
        NextCheck next = Objects.requireNonNull(answer.next());
        getChildren().addAll(Words.text("Check now", "heading"), Words.text(next.question(), "question"));
        if (next.needsYes()) {
            getChildren().add(Words.text("A key comes off: not before the owner has said yes to the quote.", "banner"));
        }
        getChildren().add(Words.text(minutes(next), "words"));
        told.tools().forEach(tool -> getChildren().add(tool(tool)));
        getChildren()
                .addAll(
                        replies(),
                        Words.text(
                                "%s, %d in 100 to be yes. About %.0f min to find it, %.0f to find and cure it."
                                        .formatted(
                                                Words.sentence(answer.why()).replaceFirst("[.]$", ""),
                                                Math.round(100 * next.probability()),
                                                answer.minutesToFind(),
                                                answer.minutesToCure()),
                                "quiet"));
    }

    private static String minutes(NextCheck next) {
        String ready = next.setUp() == null
                ? ""
                : ", after %.0f min to get ready: %s".formatted(next.setUpMinutes(), next.setUp());
        return "%.0f min%s".formatted(next.minutes(), ready);
    }

    private Node tool(ToolPlace tool) {
        VBox words = new VBox(Words.text(tool.title(), "hit-title"));
        HBox.setHgrow(words, Priority.ALWAYS);
        String drawer = tool.drawer();
        String where = drawer != null ? tool.label() : tool.here() ? "nobody wrote down where" : "not in the shop";
        Label plate = Words.text(where.isBlank() ? "no label" : where, drawer != null ? "label-plate" : "heed");
        plate.setMinWidth(USE_PREF_SIZE);
        Tile tile = new Tile(
                () -> {
                    if (drawer != null) {
                        pull.accept(drawer);
                    }
                },
                words,
                plate);
        tile.getStyleClass().addAll("link", "tool-place");
        tile.setAccessibleText(tool.title() + ", " + where + (drawer == null ? "" : "; shows the drawer"));
        return tile;
    }

    private Node replies() {
        HBox row = new HBox(
                reply("Yes", "1", "reply-yes", () -> model.answer(true)),
                reply("No", "2", "reply-no", () -> model.answer(false)),
                reply("Can\u2019t tell", "0", "reply-pass", () -> model.answer(null)));
        row.getStyleClass().add("replies");
        return row;
    }

    private static Tile reply(String words, String key, String id, Runnable press) {
        Tile tile = new Tile(press, Words.text(words, "hit-title"), Words.text(key, "quiet"));
        tile.getStyleClass().addAll("link", "reply");
        tile.setId(id);
        tile.setAccessibleText(words);
        tile.setAccessibleHelp("Key " + key);
        HBox.setHgrow(tile, Priority.ALWAYS);
        return tile;
    }
}
