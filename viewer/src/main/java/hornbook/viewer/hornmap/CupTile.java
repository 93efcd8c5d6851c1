package hornbook.viewer.hornmap;

import hornbook.viewer.widget.Tile;
import java.util.Locale;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** A cup's name and what stands beside it, to be pressed. */
final class CupTile extends Tile {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final Label title = new Label();
    private final Label value = new Label();

    CupTile(String cup, Runnable choose) {
        super(choose);
        getStyleClass().add("cup-tile");
        setId("tile-" + cup);
        setFocusTraversable(false);
        title.getStyleClass().add("cup-title");
        value.getStyleClass().add("cup-value");
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        value.setMinWidth(USE_PREF_SIZE);
        getChildren().setAll(title, value);
    }

    void show(CupMark mark, boolean chosen) {
        title.setText(mark.title());
        value.setText(mark.value());
        for (CupMark.Tone tone : CupMark.Tone.values()) {
            getStyleClass().remove(tone.name().toLowerCase(Locale.ROOT));
        }
        getStyleClass().add(mark.tone().style());
        pseudoClassStateChanged(CHOSEN, chosen);
        setAccessibleText(mark.described());
    }
}
