package hornbook.viewer.window;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The screens at the left, each a broad button with its drawing, name and number. */
final class Rail extends VBox {
    private final Map<ScreenName, ToggleButton> buttons = new EnumMap<>(ScreenName.class);
    private final ToggleGroup group = new ToggleGroup();

    Rail(List<ScreenName> names, Consumer<ScreenName> go) {
        getStyleClass().add("rail");
        names.forEach(name -> getChildren().add(button(name, go)));
    }

    private ToggleButton button(ScreenName name, Consumer<ScreenName> go) {
        Label title = new Label(name.title());
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        Label digit = new Label(Integer.toString(name.digit()));
        digit.getStyleClass().add("key-hint");
        HBox face = new HBox(new Icon(name.icon()), title, digit);
        face.getStyleClass().add("face");
        ToggleButton button = new ToggleButton(name.title(), face);
        button.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        button.setAccessibleText(name.title());
        button.setAccessibleHelp("Alt+" + name.digit());
        button.setToggleGroup(group);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setId("rail-" + name.digit());
        button.setOnAction(pressed -> {
            // A second press would unpress it, though the screen stays.
            button.setSelected(true);
            go.accept(name);
        });
        buttons.put(name, button);
        return button;
    }

    void mark(ScreenName shown) {
        ToggleButton button = buttons.get(shown);
        if (button != null) {
            button.setSelected(true);
        }
    }
}
