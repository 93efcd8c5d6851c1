package hornbook.viewer.drawers;

import hornbook.viewer.widget.Words;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** A shop without furniture: what to do first. */
final class BareShop extends VBox {
    private static final String WORDS =
            "Take the cabinet you open most. Say how many rows and columns of drawers it has,"
                    + " and it stands here. Then pull one drawer after another: write what its label says and what is really in"
                    + " it. Ten drawers a day are enough; everything is searched at once, and everything can be taken back.";

    BareShop(Runnable cabinet, Runnable bringIn) {
        getStyleClass().add("bare-shop");
        Button set = new Button("Set up the first cabinet");
        set.setId("first-cabinet");
        set.setOnAction(pressed -> cabinet.run());
        Button in = new Button("Bring in a list you have (Alt+9)");
        in.setId("bring-in");
        in.setOnAction(pressed -> bringIn.run());
        getChildren().addAll(Words.text("Nothing stands here yet.", "card-title"), Words.text(WORDS, "words"), set, in);
    }
}
