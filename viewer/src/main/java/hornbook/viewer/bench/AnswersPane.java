package hornbook.viewer.bench;

import hornbook.catalogue.identify.Seen;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What was seen, newest first: press to change, or take back. */
final class AnswersPane extends VBox {
    private final BenchModel model;
    private final VBox list = new VBox();

    private List<Seen> drawn = List.of();

    AnswersPane(BenchModel model) {
        this.model = model;
        getStyleClass().add("answers");
        list.getStyleClass().add("links");
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().setAll(Words.text("Seen so far", "heading"), scroll);
    }

    void show(BenchView view, Phrases phrases) {
        boolean any = !view.horn().looks().isEmpty();
        setVisible(any);
        setManaged(any);
        if (!drawn.equals(view.horn().looks())) {
            drawn = view.horn().looks();
            list.getChildren()
                    .setAll(view.horn().traits().reversed().stream()
                            .map(trait -> row(trait, view.horn().looks(trait), phrases))
                            .toList());
        }
    }

    private Node row(String trait, List<Seen> looks, Phrases phrases) {
        String seen = looks.stream().map(phrases::of).collect(Collectors.joining("; "));
        Tile change = new Tile(() -> model.choose(trait), Words.text(phrases.title(trait) + ": " + seen, "words"));
        change.getStyleClass().add("link");
        change.setId("answer-" + trait);
        change.setAccessibleText(phrases.title(trait) + ": " + seen);
        change.setAccessibleHelp("Changes the answer");
        HBox.setHgrow(change, Priority.ALWAYS);
        Button back = new Button("\u00d7");
        back.setId("take-back-" + trait);
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setAccessibleText("Take back: " + phrases.title(trait));
        back.setOnAction(pressed -> model.takeBack(trait));
        HBox row = new HBox(change, back);
        row.getStyleClass().add("answer-row");
        return row;
    }
}
