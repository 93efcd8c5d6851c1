package hornbook.viewer.card;

import hornbook.viewer.widget.PictureView;
import hornbook.viewer.widget.Words;
import javafx.scene.Node;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What a trait can be, drawing by drawing, and where to look for it. Without drawings, a list of words. */
final class DrawnValues extends VBox {
    DrawnValues(Block.Drawn drawn) {
        getStyleClass().add("drawn-values");
        drawn.look()
                .ifPresent(look ->
                        getChildren().addAll(Words.text("Where to look", "heading"), sized(new PictureView(look))));
        if (drawn.values().isEmpty()) {
            return;
        }
        getChildren().add(Words.text("What one can see", "heading"));
        boolean pictures =
                drawn.values().stream().anyMatch(value -> value.picture().isPresent());
        if (pictures) {
            FlowPane flow = new FlowPane();
            flow.getStyleClass().add("drawn-flow");
            drawn.values().forEach(value -> flow.getChildren().add(cell(value)));
            getChildren().add(flow);
        } else {
            drawn.values()
                    .forEach(value -> getChildren().add(Words.text(value.name() + ": " + value.words(), "words")));
        }
    }

    private static Node cell(Block.Seen value) {
        VBox cell = new VBox();
        cell.getStyleClass().add("drawn-cell");
        value.picture().ifPresent(picture -> cell.getChildren().add(sized(new PictureView(picture))));
        cell.getChildren().addAll(Words.text(value.name(), "value-name"), Words.text(value.words(), "drawn-words"));
        return cell;
    }

    private static PictureView sized(PictureView view) {
        view.getStyleClass().add("drawn-picture");
        return view;
    }
}
