package hornbook.viewer.restock;

import hornbook.shared.restock.RestockLine;
import hornbook.viewer.widget.Words;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One line of the list: how many, what, why, what was used, and the way to its drawer. */
final class LineRow extends HBox {
    LineRow(RestockLine line, Consumer<String> pull) {
        getStyleClass().add("restock-row");
        Label order = new Label(line.order() > 0 ? String.valueOf(line.order()) : "–");
        order.getStyleClass().add("count");
        VBox words = new VBox(Words.text(line.what(), "lot-title"), Words.text(Words.sentence(line.why()), "why"));
        line.remarks().forEach(remark -> words.getChildren().add(Words.text(Words.sentence(remark), "heed")));
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMinWidth(0);
        getChildren().addAll(order, words, new UsePlot(line.usesByMonth()));
        String drawer = line.drawer();
        if (drawer != null) {
            Button look = new Button(line.counted() != null ? "Look" : "Drawer");
            look.setId("look-" + line.lot());
            look.setMinWidth(Region.USE_PREF_SIZE);
            look.setAccessibleText((line.counted() != null ? "Look into " : "Open ") + drawer + " for " + line.what());
            look.setOnAction(pressed -> pull.accept(drawer));
            getChildren().add(look);
        }
        setAccessibleText(line.what() + ". " + line.why());
    }
}
