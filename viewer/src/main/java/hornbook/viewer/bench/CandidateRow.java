package hornbook.viewer.bench;

import hornbook.viewer.widget.ChanceBar;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A candidate: what it is, when it was made, how likely, as words and as a bar. */
final class CandidateRow extends Tile {
    CandidateRow(String id, String title, String years, double probability, Runnable press) {
        super(press);
        getStyleClass().add("candidate");
        Label chance = new Label(Words.chance(probability));
        chance.getStyleClass().add("chance");
        chance.setMinWidth(Region.USE_PREF_SIZE);
        Label named = Words.text(title, "candidate-title");
        HBox.setHgrow(named, Priority.ALWAYS);
        named.setMaxWidth(Double.MAX_VALUE);
        Label when = new Label(years);
        when.getStyleClass().add("quiet");
        ChanceBar bar = new ChanceBar(probability);
        HBox.setHgrow(bar, Priority.ALWAYS);
        HBox below = new HBox(bar, when);
        below.getStyleClass().add("bar-line");
        VBox face = new VBox(new HBox(named, chance), below);
        face.getStyleClass().add("candidate-face");
        HBox.setHgrow(face, Priority.ALWAYS);
        getChildren().add(face);
        setId("candidate-" + id);
        setAccessibleText(title + ", " + Words.chance(probability) + (years.isEmpty() ? "" : ", " + years));
        setAccessibleHelp("Shows why");
    }
}
