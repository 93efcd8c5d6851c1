package hornbook.viewer.hornmap;

import hornbook.catalogue.hornmap.HornMap;
import hornbook.catalogue.picture.Pictures;
import hornbook.viewer.widget.Words;
import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import java.util.Objects;
import java.util.Set;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** The horn in hand, cup by cup. */
public final class HornMapScreen implements Screen {
    private final HornMapModel model;
    private final BorderPane root = new BorderPane();
    private final HornChoice choice = new HornChoice();
    private final Label title = Words.text("", "card-title");
    private final HBox head;
    private final CupPanel panel;

    private @Nullable HornDrawing drawing;
    private String drawn = "";

    public HornMapScreen(HornMapModel model) {
        this.model = model;
        root.getStyleClass().add("horn-map");
        root.getStylesheets()
                .add(Objects.requireNonNull(HornMapScreen.class.getResource("hornmap.css"))
                        .toExternalForm());
        panel = new CupPanel(model);
        Button other = new Button("Another horn");
        other.setAccessibleHelp("Esc");
        other.setMinWidth(Region.USE_PREF_SIZE);
        other.setOnAction(pressed -> model.putAway());
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        head = new HBox(title, other);
        head.getStyleClass().add("panel-head");
        model.onChange(this::draw);
    }

    @Override
    public ScreenName name() {
        return ScreenName.HORN_MAP;
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public void shown() {
        model.refresh();
        Platform.runLater(panel::focus);
    }

    @Override
    public void changed(Set<String> kinds) {
        model.refresh();
    }

    @Override
    public boolean back() {
        return model.putAway();
    }

    private void draw(HornMapView view) {
        HornMap map = view.map();
        if (map == null) {
            choice.show(view.bench(), model::show);
            root.setTop(null);
            root.setRight(null);
            root.setCenter(choice);
            drawn = "";
            return;
        }
        title.setText(map.title() + (map.job() == null ? "" : "  \u00b7  " + map.job()));
        if (!map.horn().equals(drawn) || drawing == null) {
            drawing = new HornDrawing(new Pictures().horn(map.instrument()), this::press);
            root.setTop(head);
            root.setCenter(drawing);
            root.setRight(panel);
            Platform.runLater(panel::focus);
            drawn = map.horn();
        }
        drawing.show(view.marks(), view.chosen());
        panel.show(view);
    }

    private void press(String cup) {
        model.choose(cup);
        panel.focus();
    }
}
