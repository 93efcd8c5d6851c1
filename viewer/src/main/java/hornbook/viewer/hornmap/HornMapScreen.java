package hornbook.viewer.hornmap;

import hornbook.catalogue.hornmap.HornMap;
import hornbook.catalogue.picture.Pictures;
import hornbook.viewer.widget.Words;
import hornbook.viewer.window.FramedScreen;
import hornbook.viewer.window.ScreenName;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** The horn in hand, cup by cup. */
public final class HornMapScreen extends FramedScreen {
    private final HornMapModel model;
    private final HornChoice choice = new HornChoice();
    private final Label title = Words.text("", "card-title");
    private final HBox head;
    private final CupPanel panel;

    private @Nullable HornDrawing drawing;
    private String drawn = "";

    public HornMapScreen(HornMapModel model) {
        super(ScreenName.HORN_MAP, "horn-map", "hornmap.css");
        this.model = model;
        panel = new CupPanel(model);
        Button other = new Button("Another horn");
        other.setAccessibleHelp("Esc");
        other.setMinWidth(Region.USE_PREF_SIZE);
        other.setOnAction(pressed -> model.putAway());
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        head = new HBox(title, other);
        head.getStyleClass().add("panel-head");
        frame().setFocusTraversable(true);
        frame().addEventHandler(KeyEvent.KEY_TYPED, this::typed);
        model.onChange(this::draw);
    }

    @Override
    protected void refresh() {
        model.refresh();
    }

    @Override
    public void takeKeyboard() {
        if (model.view().map() == null) {
            frame().requestFocus();
        } else {
            panel.focus();
        }
    }

    /** While a horn is to be chosen a digit chooses it. */
    private void typed(KeyEvent key) {
        boolean choosing = model.view().map() == null && !key.isAltDown() && !key.isShortcutDown();
        if (choosing && key.getCharacter().matches("[1-9]")) {
            model.view().bench().stream()
                    .skip(key.getCharacter().charAt(0) - '1')
                    .findFirst()
                    .ifPresent(on -> model.show(on.horn()));
            key.consume();
        }
    }

    @Override
    public boolean back() {
        return model.putAway();
    }

    private void draw(HornMapView view) {
        HornMap map = view.map();
        if (map == null) {
            choice.show(view.known(), view.bench(), model::show);
            frame().setTop(null);
            frame().setRight(null);
            frame().setCenter(choice);
            drawn = "";
            return;
        }
        title.setText(map.title() + (map.job() == null ? "" : "  \u00b7  " + map.job()));
        if (!map.horn().equals(drawn) || drawing == null) {
            drawing = new HornDrawing(new Pictures().horn(map.instrument()), this::press);
            frame().setTop(head);
            frame().setCenter(drawing);
            frame().setRight(panel);
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
