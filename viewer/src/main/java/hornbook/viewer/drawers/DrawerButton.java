package hornbook.viewer.drawers;

import hornbook.shared.stock.DrawerFront;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** A drawer's front with its label in a brass frame. What it says in colour it also says in a sign and in words. */
final class DrawerButton extends Button {
    private static final PseudoClass LIT = PseudoClass.getPseudoClass("lit");
    private static final PseudoClass PULLED = PseudoClass.getPseudoClass("pulled");

    private final DrawerFront front;
    private boolean pulled;

    DrawerButton(DrawerFront front) {
        this.front = front;
        getStyleClass().add("drawer-front");
        getStyleClass().add(front.empty() ? "empty" : "filled");
        Label label = new Label(words());
        label.getStyleClass().addAll("drawer-label", state());
        label.setWrapText(true);
        VBox face = new VBox(label);
        face.getStyleClass().add("face");
        if (front.empty()) {
            Label sign = new Label("empty");
            sign.getStyleClass().add("empty-sign");
            face.getChildren().add(sign);
        }
        setGraphic(face);
        face.prefWidthProperty().bind(widthProperty());
        face.prefHeightProperty().bind(heightProperty());
        setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        setId(front.id());
        describe(false);
    }

    DrawerFront front() {
        return front;
    }

    boolean isPulled() {
        return pulled;
    }

    void show(boolean lit, boolean isPulled) {
        pulled = isPulled;
        pseudoClassStateChanged(LIT, lit);
        pseudoClassStateChanged(PULLED, pulled);
        describe(lit);
    }

    private String state() {
        return switch (front.labelState()) {
            case RIGHT -> front.unsure() ? "unsure" : "right";
            case DRIFTED -> "drifted";
            case NONE -> "unlabelled";
        };
    }

    /** A label that does not say what is inside is crossed out by a sign, not only by a colour. */
    private String words() {
        return switch (front.labelState()) {
            case RIGHT -> front.label();
            case DRIFTED -> "\u2260 " + front.label();
            case NONE -> "no label";
        };
    }

    private void describe(boolean lit) {
        StringBuilder words = new StringBuilder();
        words.append(front.label().isBlank() ? "Drawer without a label" : "Drawer " + front.label());
        words.append(", row ").append(front.row()).append(", column ").append(front.column());
        words.append(lit ? ", holds what you look for" : "");
        words.append(front.empty() ? ", empty" : ", holds " + front.contents());
        if (front.heed() != null) {
            words.append("; ").append(front.heed());
        }
        setAccessibleText(words.toString());
    }
}
