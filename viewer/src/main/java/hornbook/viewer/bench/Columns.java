package hornbook.viewer.bench;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Three columns; where there is no room for three, the two at the right take turns. */
final class Columns extends HBox {
    private static final double WIDE_IN_TYPE = 53;

    private final Region middle;
    private final Region right;
    private final ToggleButton shape = new ToggleButton("What it may be");
    private final ToggleButton bites = new ToggleButton("Brief");
    private final HBox turns = new HBox(shape, bites);
    private final VBox column = new VBox();
    private Node left;
    private boolean narrow;

    Columns(Node left, Region middle, Region right) {
        this.left = left;
        this.middle = middle;
        this.right = right;
        getStyleClass().add("columns");
        // Else it would never be told that there is less room than three columns want.
        setMinWidth(0);
        turns.getStyleClass().add("brief-tabs");
        column.getStyleClass().add("middle-column");
        ToggleGroup group = new ToggleGroup();
        for (ToggleButton turn : List.of(shape, bites)) {
            turn.setToggleGroup(group);
            turn.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(turn, Priority.ALWAYS);
            turn.setOnAction(pressed -> {
                turn.setSelected(true);
                arrange();
            });
        }
        shape.setSelected(true);
        VBox.setVgrow(middle, Priority.ALWAYS);
        VBox.setVgrow(right, Priority.ALWAYS);
        arrange();
        widthProperty().subscribe(now -> {
            boolean tight = now.doubleValue() > 0
                    && now.doubleValue() < WIDE_IN_TYPE * shape.getFont().getSize();
            if (tight != narrow) {
                narrow = tight;
                arrange();
            }
        });
    }

    /** Shows something else at the left. */
    void left(Node node) {
        if (left != node) {
            left = node;
            HBox.setHgrow(node, Priority.ALWAYS);
            getChildren().set(0, node);
        }
    }

    private void arrange() {
        column.getChildren().clear();
        getChildren().clear();
        HBox.setHgrow(left, Priority.ALWAYS);
        if (narrow) {
            column.getChildren().setAll(turns, shape.isSelected() ? middle : right);
            getChildren().setAll(left, column);
        } else {
            getChildren().setAll(left, middle, right);
        }
    }
}
