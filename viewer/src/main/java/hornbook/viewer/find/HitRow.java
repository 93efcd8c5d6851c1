package hornbook.viewer.find;

import hornbook.indexer.search.Hit;
import hornbook.viewer.widget.Plate;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** One hit: how many are on hand, what it is and why it is here, and the label of its drawer. */
final class HitRow extends Tile {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    HitRow(Hit hit, Runnable open) {
        super(open, count(hit), words(hit));
        getStyleClass().add("hit");
        if (hit.drawer() != null) {
            getChildren().add(plate(hit));
        }
        setId("hit-" + hit.id());
        setAccessibleText(described(hit));
    }

    void show(boolean chosen) {
        pseudoClassStateChanged(CHOSEN, chosen);
    }

    private static Label count(Hit hit) {
        String onHand = text(hit.onHand());
        Label count = new Label(onHand.isEmpty() ? hit.kind() : onHand);
        count.getStyleClass().addAll(onHand.isEmpty() ? "kind" : "on-hand", onHand.equals("0") ? "none" : "some");
        return count;
    }

    private static VBox words(Hit hit) {
        VBox words = new VBox(Words.text(hit.title(), "hit-title"));
        if (!hit.why().isBlank()) {
            words.getChildren().add(Words.text(hit.why(), "why"));
        }
        words.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(words, Priority.ALWAYS);
        return words;
    }

    private static Plate plate(Hit hit) {
        Plate plate = new Plate(text(hit.drawerLabel()), text(hit.where()));
        plate.getStyleClass().add("hit-plate");
        plate.setMinWidth(Region.USE_PREF_SIZE);
        return plate;
    }

    private static String described(Hit hit) {
        String onHand = hit.onHand() == null ? "" : hit.onHand() + " on hand, ";
        String drawer =
                hit.drawer() == null ? "" : ", in the drawer " + text(hit.drawerLabel()) + ", " + text(hit.where());
        return onHand + hit.title() + ", " + hit.kind() + drawer + (hit.why().isBlank() ? "" : ", " + hit.why());
    }

    private static String text(@Nullable String words) {
        return words == null ? "" : words;
    }
}
