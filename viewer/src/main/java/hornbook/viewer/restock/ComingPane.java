package hornbook.viewer.restock;

import hornbook.shared.restock.OnTheWay;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What is on its way; pressed when it has come. */
final class ComingPane extends VBox {
    private final Consumer<OnTheWay> came;

    ComingPane(Consumer<OnTheWay> came) {
        this.came = came;
        getStyleClass().add("coming");
    }

    void show(List<OnTheWay> coming) {
        List<Node> nodes = new ArrayList<>();
        nodes.add(Words.text("On the way", "supplier"));
        if (coming.isEmpty()) {
            nodes.add(Words.text("Nothing.", "quiet"));
        } else {
            nodes.add(Words.text("Press what has come in.", "quiet"));
        }
        coming.forEach(order -> nodes.add(tile(order)));
        getChildren().setAll(nodes);
    }

    private Node tile(OnTheWay order) {
        Label pieces = Words.text(String.valueOf(order.pieces()), "count");
        VBox words = new VBox(
                Words.text(order.what(), "lot-title"),
                Words.text(order.supplierName() + ", ordered " + order.orderedOn(), "quiet"));
        if (order.expected() != null) {
            words.getChildren()
                    .add(Words.text(
                            order.late() ? "Late: usual by " + order.expected() : "Usual by " + order.expected(),
                            order.late() ? "heed" : "quiet"));
        }
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMinWidth(0);
        Tile tile = new Tile(() -> came.accept(order), pieces, words);
        tile.setId("came-" + order.order());
        tile.getStyleClass().addAll("link", "coming-order");
        tile.setAccessibleText(order.pieces() + " " + order.what() + " from " + order.supplierName() + ": goods in");
        return tile;
    }
}
