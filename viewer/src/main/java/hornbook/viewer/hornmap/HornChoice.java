package hornbook.viewer.hornmap;

import hornbook.shared.job.OnBench;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Which horn: those on the bench, by a press or by their digit. */
final class HornChoice extends ScrollPane {
    private static final int DIGITS = 9;

    private final VBox list = new VBox();

    HornChoice() {
        getStyleClass().add("horn-choice");
        list.getStyleClass().add("links");
        setContent(list);
        setFitToWidth(true);
        setFocusTraversable(false);
    }

    /** @param known were they read yet? */
    void show(boolean known, List<OnBench> horns, Consumer<String> choose) {
        list.getChildren().setAll(Words.text(says(known, horns), "card-title"));
        horns.forEach(on -> list.getChildren().add(tile(on, horns.indexOf(on) + 1, () -> choose.accept(on.horn()))));
    }

    private static String says(boolean known, List<OnBench> horns) {
        if (!known) {
            return "Reading the books\u2026";
        }
        return horns.isEmpty()
                ? "No horn is on the bench. Take one in on the screen Jobs, or open a horn's card in Find."
                : "Which horn?";
    }

    private static Tile tile(OnBench on, int place, Runnable choose) {
        String sold = on.soldAs() == null || on.soldAs().isBlank() ? "" : ", sold as " + on.soldAs();
        String words = on.model() + sold + "  \u00b7  " + on.serial();
        VBox face = new VBox(Words.text(words, "lot-title"), Words.text(on.id() + "  " + on.complaint(), "quiet"));
        Label digit = new Label(place <= DIGITS ? Integer.toString(place) : "");
        digit.getStyleClass().add("pick-digit");
        digit.setMinWidth(Region.USE_PREF_SIZE);
        Tile tile = new Tile(choose, digit, face);
        tile.getStyleClass().add("link");
        tile.setId("map-" + on.horn());
        tile.setAccessibleText(words + ", " + on.complaint());
        return tile;
    }
}
