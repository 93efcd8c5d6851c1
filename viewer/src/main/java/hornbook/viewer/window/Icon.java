package hornbook.viewer.window;

import javafx.scene.layout.StackPane;
import javafx.scene.shape.SVGPath;

/** A line drawing that grows with the type it stands beside. Says nothing to a screen reader: its words stand by. */
final class Icon extends StackPane {
    private static final double DRAWN_ON = 24;

    Icon(String drawing) {
        SVGPath path = new SVGPath();
        path.setContent(drawing);
        path.getStyleClass().add("line");
        path.scaleXProperty().bind(widthProperty().divide(DRAWN_ON));
        path.scaleYProperty().bind(widthProperty().divide(DRAWN_ON));
        path.setManaged(false);
        // Unmanaged, so that the drawing's own bounds do not push it off the square it was drawn on.
        path.layoutXProperty().bind(widthProperty().subtract(DRAWN_ON).divide(2));
        path.layoutYProperty().bind(heightProperty().subtract(DRAWN_ON).divide(2));
        getStyleClass().add("icon");
        getChildren().add(path);
        setMouseTransparent(true);
    }
}
