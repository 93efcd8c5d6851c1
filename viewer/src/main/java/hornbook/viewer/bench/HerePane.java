package hornbook.viewer.bench;

import hornbook.shared.job.OnBench;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The horns that are in the shop, to lay one on the bench; or any other by its number. */
final class HerePane extends VBox {
    private final BenchModel model;

    HerePane(BenchModel model, List<OnBench> horns, Phrases phrases) {
        this.model = model;
        getStyleClass().addAll("look-pane", "form");
        TextField number = new TextField();
        number.setId("horn-number");
        number.setPromptText("h-194 or j-0237");
        number.setAccessibleText("Number of a horn or a job seen before");
        number.setOnAction(enter -> lay(number.getText().strip()));
        VBox list = new VBox();
        list.getStyleClass().add("look-list");
        horns.forEach(horn -> list.getChildren().add(row(horn, phrases)));
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren()
                .addAll(
                        ConfirmPane.head("Horns here", model),
                        scroll,
                        Words.text("Another that was here before, by its number", "heading"),
                        number);
    }

    private void lay(String number) {
        if (!number.isEmpty()) {
            model.lay(number.startsWith("j") ? "job" : "horn", number);
        }
    }

    private Node row(OnBench horn, Phrases phrases) {
        String title = horn.model().equals("unlisted") ? horn.instrument() : phrases.title(horn.model());
        VBox words = new VBox(Words.text(title, "hit-title"), Words.text(Words.sentence(horn.complaint()), "words"));
        words.getChildren().add(Words.text(horn.horn() + "  \u00b7  " + horn.id(), "quiet"));
        HBox.setHgrow(words, Priority.ALWAYS);
        Tile tile = new Tile(() -> model.lay("job", horn.id()), words);
        tile.getStyleClass().add("link");
        tile.setId("here-" + horn.id());
        tile.setAccessibleText(title + ", " + horn.complaint());
        return tile;
    }
}
