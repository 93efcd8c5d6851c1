package hornbook.viewer.bench;

import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.identify.NextLook;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** All looks, best first; those that leave a mark apart, behind the owner's yes. */
final class LookList extends VBox {
    private final BenchModel model;
    private final VBox list = new VBox();
    private final ScrollPane scroll = new ScrollPane(list);

    LookList(BenchModel model) {
        this.model = model;
        getStyleClass().add("look-pane");
        list.getStyleClass().add("look-list");
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        Button back = new Button("Back");
        back.setAccessibleHelp("Esc");
        back.setOnAction(pressed -> model.back());
        Label title = Words.text("What to look at", "question");
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        HBox top = new HBox(title, back);
        top.getStyleClass().add("panel-head");
        getChildren().setAll(top, scroll);
    }

    void show(BenchView view, Phrases phrases) {
        List<Node> rows = new ArrayList<>();
        view.looks().forEach(look -> rows.add(row(look, phrases, true)));
        Weighed weighed = view.weighed();
        if (weighed != null && !weighed.answer().marking().isEmpty()) {
            rows.add(Words.text("These leave a mark: only with the owner\u2019s yes", "heading"));
            rows.add(consent(view));
            weighed.answer().marking().forEach(look -> rows.add(row(look, phrases, view.mayMark(look))));
        }
        if (!view.rest().isEmpty()) {
            rows.add(Words.text("What tells little now, or waits until it is apart", "heading"));
            view.rest().forEach(trait -> rows.add(row(trait)));
        }
        list.getChildren().setAll(rows);
    }

    private Node consent(BenchView view) {
        if (view.horn().consent()) {
            return Words.text(
                    "The owner said yes; it is written down on the job. What stays grey waits for a look that guards"
                            + " against harm.",
                    "quiet");
        }
        if (view.horn().job() == null) {
            return Words.text("Take the horn in as a job first: the yes is written down on it.", "quiet");
        }
        Button yes = new Button("The owner said yes");
        yes.setId("owner-agreed");
        yes.setOnAction(pressed -> model.deeds().agreed());
        return yes;
    }

    private Node row(Trait trait) {
        Tile tile = new Tile(
                () -> model.choose(trait.id()),
                new VBox(Words.text(trait.title(), "hit-title"), Words.text(LookHead.effort(trait.cost()), "quiet")));
        tile.getStyleClass().add("link");
        tile.setId("look-" + trait.id());
        tile.setAccessibleText(trait.title() + ". " + LookHead.effort(trait.cost()));
        return tile;
    }

    private Node row(NextLook look, Phrases phrases, boolean allowed) {
        VBox words =
                new VBox(Words.text(phrases.title(look.trait()), "hit-title"), Words.text(look.question(), "words"));
        String mark = look.marks() == null ? "" : "It leaves a mark: " + look.marks() + ".";
        words.getChildren().add(Words.text(mark.isEmpty() ? LookHead.effort(look.cost()) : mark, "quiet"));
        Tile tile = new Tile(() -> model.choose(look.trait()), words);
        tile.setDisable(!allowed);
        HBox.setHgrow(words, Priority.ALWAYS);
        tile.getStyleClass().add("link");
        tile.setAccessibleText(phrases.title(look.trait()) + ". " + look.question());
        return tile;
    }
}
