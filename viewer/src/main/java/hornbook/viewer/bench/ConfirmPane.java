package hornbook.viewer.bench;

import hornbook.catalogue.identify.Confirmation;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** It is this: by what is that known? */
final class ConfirmPane extends VBox {
    ConfirmPane(BenchModel model, BenchView.Side.Confirm it, InHand horn) {
        getStyleClass().addAll("look-pane", "form");
        ReasonFields reason = new ReasonFields();
        reason.setVisible(horn.horn() == null);
        reason.setManaged(reason.isVisible());
        getChildren().addAll(head("It is a " + it.title(), model), reason, Words.text("How is that known?", "heading"));
        for (Confirmation by : Confirmation.values()) {
            getChildren().add(way(by, () -> model.deeds().confirm(it.model(), by, reason.reason())));
        }
        getChildren().add(Words.text("The looks are written down with it. Undo takes it all back.", "quiet"));
    }

    static Node head(String words, BenchModel model) {
        Button back = new Button("Back");
        back.setMinWidth(USE_PREF_SIZE);
        back.setAccessibleHelp("Esc");
        back.setOnAction(pressed -> model.back());
        Label title = Words.text(words, "question");
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        HBox top = new HBox(title, back);
        top.getStyleClass().add("panel-head");
        return top;
    }

    private static Node way(Confirmation by, Runnable press) {
        Tile tile = new Tile(press, Words.text(words(by), "words"));
        tile.getStyleClass().add("link");
        tile.setId("by-" + by.name().toLowerCase(java.util.Locale.ROOT));
        tile.setAccessibleText(words(by));
        return tile;
    }

    private static String words(Confirmation by) {
        return switch (by) {
            case PAPER -> "On paper: a bill, a works list, a letter. Sure.";
            case NAME -> "By the maker\u2019s own name on it. Sure.";
            case TAKEN_APART -> "Seen from inside, taken apart. Sure.";
            case TRAITS -> "By these looks alone. Likely, not sure.";
        };
    }
}
