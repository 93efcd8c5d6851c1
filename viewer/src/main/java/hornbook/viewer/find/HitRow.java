package hornbook.viewer.find;

import hornbook.indexer.search.Hit;
import hornbook.viewer.widget.Plate;
import hornbook.viewer.widget.Words;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One hit: how many are on hand, what it is and why it is here, and the label of its drawer. */
final class HitRow extends Button {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    HitRow(Hit hit) {
        getStyleClass().add("hit");
        HBox face = new HBox(count(hit), words(hit));
        face.getStyleClass().add("face");
        if (hit.drawer() != null) {
            face.getChildren().add(plate(hit));
        }
        setGraphic(face);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setAlignment(Pos.CENTER_LEFT);
        setMaxWidth(Double.MAX_VALUE);
        setMinWidth(0);
        setPrefWidth(0);
        face.setMinWidth(0);
        face.prefWidthProperty().bind(widthProperty().subtract(2 * EDGE));
        setId("hit-" + hit.id());
        setAccessibleText(described(hit));
    }

    /** Room at each side for the frame that marks the chosen row. */
    private static final double EDGE = 12;

    void show(boolean chosen) {
        pseudoClassStateChanged(CHOSEN, chosen);
    }

    private static Label count(Hit hit) {
        String onHand = hit.onHand() == null ? "" : hit.onHand();
        Label count = new Label(onHand.isEmpty() ? hit.kind() : onHand);
        count.getStyleClass().addAll(onHand.isEmpty() ? "kind" : "on-hand", onHand.equals("0") ? "none" : "some");
        count.setMinWidth(Region.USE_PREF_SIZE);
        return count;
    }

    private static VBox words(Hit hit) {
        VBox words = new VBox(Words.text(hit.title(), "hit-title"));
        if (!hit.why().isBlank()) {
            words.getChildren().add(Words.text(hit.why(), "why"));
        }
        words.setAlignment(Pos.CENTER_LEFT);
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        return words;
    }

    private static Plate plate(Hit hit) {
        Plate plate = new Plate(text(hit.drawerLabel()), text(hit.where()));
        plate.getStyleClass().add("hit-plate");
        return plate;
    }

    private static String described(Hit hit) {
        String onHand = hit.onHand() == null ? "" : hit.onHand() + " on hand, ";
        String drawer = hit.drawer() == null ? "" : ", in the drawer " + text(hit.drawerLabel()) + ", " + text(hit.where());
        return onHand + hit.title() + ", " + hit.kind() + drawer + (hit.why().isBlank() ? "" : ", " + hit.why());
    }

    private static String text(@org.jspecify.annotations.Nullable String words) {
        return words == null ? "" : words;
    }
}
