package hornbook.viewer.bench;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;

/** Things side by side, all equally wide and as high as the highest needs to be. */
class EvenRow extends GridPane {
    void show(List<? extends Node> nodes) {
        getChildren().clear();
        getColumnConstraints()
                .setAll(nodes.stream().map(node -> column(nodes.size())).toList());
        IntStream.range(0, nodes.size()).forEach(i -> add(nodes.get(i), i, 0));
    }

    private static ColumnConstraints column(int of) {
        ColumnConstraints column = new ColumnConstraints();
        column.setPercentWidth(100.0 / of);
        column.setFillWidth(true);
        return column;
    }
}
