package hornbook.viewer.window;

import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Across the top: whose shop it is on a brass plate, the search box, and the choice of colours. */
final class TopBar extends HBox {
    private final Button look = new Button("", new Icon(Icons.LOOK));

    TopBar(String title, SearchBox search) {
        getStyleClass().add("top-bar");
        Label plate = new Label(title);
        plate.getStyleClass().add("plate");
        HBox.setHgrow(search, Priority.ALWAYS);
        look.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        look.getStyleClass().add("look");
        getChildren().addAll(plate, search, look);
    }

    void onLook(Runnable change) {
        look.setOnAction(pressed -> change.run());
    }

    void tellLook(Look now) {
        look.setAccessibleText("Colours: " + now.title());
        look.setTooltip(new Tooltip("Colours: " + now.title()));
    }
}
