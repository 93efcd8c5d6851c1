package hornbook.viewer.hornmap;

import hornbook.shared.job.KeyField;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** What is entered on the map: one broad button each, and for the keys which of their measures. */
final class LayerBar extends FlowPane {
    private final Map<Layer, ToggleButton> buttons = new EnumMap<>(Layer.class);
    private final ToggleGroup group = new ToggleGroup();
    private final ComboBox<KeyField> fields = new ComboBox<>();

    LayerBar(Consumer<Layer> chooseLayer, Consumer<KeyField> chooseField) {
        getStyleClass().add("layer-bar");
        for (Layer layer : Layer.values()) {
            ToggleButton button = new ToggleButton(layer.title());
            button.setToggleGroup(group);
            button.setId("layer-" + layer.name().toLowerCase(Locale.ROOT));
            button.setOnAction(pressed -> {
                button.setSelected(true);
                chooseLayer.accept(layer);
            });
            buttons.put(layer, button);
            getChildren().add(button);
        }
        fields.getItems().setAll(KeyField.values());
        fields.setConverter(new Titles());
        fields.setAccessibleText("Which measure of the key");
        fields.setOnAction(chosen -> {
            if (fields.getValue() != null) {
                chooseField.accept(fields.getValue());
            }
        });
        getChildren().add(fields);
    }

    void show(HornMapView view) {
        ToggleButton button = buttons.get(view.layer());
        if (button != null) {
            button.setSelected(true);
        }
        fields.setVisible(view.layer() == Layer.KEYS);
        fields.setManaged(view.layer() == Layer.KEYS);
        if (fields.getValue() != view.field()) {
            fields.setValue(view.field());
        }
    }

    private static final class Titles extends StringConverter<KeyField> {
        @Override
        public String toString(@Nullable KeyField field) {
            return field == null ? "" : field.title();
        }

        @Override
        public @Nullable KeyField fromString(String words) {
            return null;
        }
    }
}
