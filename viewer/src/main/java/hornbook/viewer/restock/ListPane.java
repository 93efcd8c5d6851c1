package hornbook.viewer.restock;

import hornbook.shared.restock.OrderList;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The list, supplier by supplier, and last what is to be done before anything is ordered. */
final class ListPane extends ScrollPane {
    private final VBox lines = new VBox();
    private final Consumer<OrderList> ordered;
    private final Consumer<String> pull;

    ListPane(Consumer<OrderList> ordered, Consumer<String> pull) {
        this.ordered = ordered;
        this.pull = pull;
        lines.getStyleClass().add("restock-lines");
        setContent(lines);
        setFitToWidth(true);
        getStyleClass().add("restock-scroll");
    }

    void show(RestockView view) {
        List<Node> nodes = new ArrayList<>();
        RestockList list = view.list();
        if (list != null) {
            list.answer().remarks().forEach(remark -> nodes.add(Words.text(Words.sentence(remark), "stop")));
            list.orders().forEach(order -> supplier(order, nodes));
            if (!view.first().isEmpty()) {
                nodes.add(Words.text("To do before anything is ordered", "supplier"));
                view.first().forEach(line -> nodes.add(new LineRow(line, pull)));
            }
        }
        if (view.nothingToDo()) {
            nodes.add(Words.text("Nothing is about to run out, and nothing is on its way.", "said"));
        }
        lines.getChildren().setAll(nodes);
    }

    private void supplier(OrderList order, List<Node> nodes) {
        Label name = Words.text(order.name(), "supplier");
        Label sum =
                Words.text(order.total() == null ? "" : order.total().toPlainString() + " at the last prices", "quiet");
        sum.setMinWidth(Region.USE_PREF_SIZE);
        HBox head = new HBox(name, sum);
        head.getStyleClass().add("supplier-head");
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        if (order.supplier() != null && order.lines().stream().allMatch(line -> line.lot() != null)) {
            Button out = new Button("Ordered");
            out.setId("ordered-" + order.supplier());
            out.setMinWidth(Region.USE_PREF_SIZE);
            out.setAccessibleText("The order to " + order.name() + " went out");
            out.setOnAction(pressed -> ordered.accept(order));
            head.getChildren().add(out);
        }
        nodes.add(head);
        if (order.heed() != null) {
            nodes.add(Words.text(Words.sentence(order.heed()), "heed"));
        }
        order.lines().forEach(line -> nodes.add(new LineRow(line, pull)));
    }
}
