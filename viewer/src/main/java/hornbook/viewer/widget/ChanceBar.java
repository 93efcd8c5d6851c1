package hornbook.viewer.widget;

import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** How likely something is, as a bar; beside it stands the chance in words, for who cannot see it. */
public final class ChanceBar extends StackPane {
    /** @param probability from 0 to 1 */
    public ChanceBar(double probability) {
        Region full = new Region();
        full.getStyleClass().add("chance-part");
        getStyleClass().add("chance-bar");
        setAlignment(Pos.CENTER_LEFT);
        getChildren().add(full);
        full.maxWidthProperty().bind(widthProperty().multiply(probability));
    }
}
