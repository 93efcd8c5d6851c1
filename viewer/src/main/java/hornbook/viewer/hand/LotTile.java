package hornbook.viewer.hand;

import hornbook.shared.stock.LotLine;
import hornbook.viewer.widget.LotRow;
import hornbook.viewer.widget.Tile;
import java.util.Set;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A lot in the open drawer; the one in hand shows what can be done with it. */
final class LotTile extends VBox {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    /** What hands do every day; the rest is one press further, its letter is not. */
    private static final Set<Act> OFTEN = Set.of(Act.COUNT, Act.TAKE, Act.PUT_IN, Act.MOVE);

    private final Tile tile;

    LotTile(LotLine lot, boolean chosen, Runnable choose, Consumer<Act> act) {
        LotRow row = new LotRow(lot);
        HBox.setHgrow(row, Priority.ALWAYS);
        tile = new Tile(choose, row);
        tile.setAccessibleText(row.getAccessibleText() + (lot.heed() == null ? "" : ", " + lot.heed()));
        tile.setId("lot-" + lot.id());
        getStyleClass().add("lot-tile");
        pseudoClassStateChanged(CHOSEN, chosen);
        getChildren().add(tile);
        if (chosen) {
            getChildren().add(acts(lot, act));
        }
    }

    void focus() {
        tile.requestFocus();
    }

    private static FlowPane acts(LotLine lot, Consumer<Act> act) {
        FlowPane acts = new FlowPane();
        acts.getStyleClass().add("acts");
        boolean bag = lot.notYetKnown();
        Act.onLots().stream()
                .filter(what -> OFTEN.contains(what) || (bag && what == Act.SORT_OUT))
                .forEach(what -> acts.getChildren().add(button(what, lot, act)));
        MenuButton more = new MenuButton("More");
        more.setFocusTraversable(false);
        more.setAccessibleText("More to do with " + lot.title());
        Act.onLots().stream()
                .filter(what -> !OFTEN.contains(what) && !(bag && what == Act.SORT_OUT))
                .forEach(what -> more.getItems().add(item(what, lot, act)));
        acts.getChildren().add(more);
        return acts;
    }

    private static MenuItem item(Act what, LotLine lot, Consumer<Act> act) {
        MenuItem item = new MenuItem(words(what, lot) + "  " + Character.toUpperCase(what.letter()));
        item.setOnAction(pressed -> act.accept(what));
        return item;
    }

    private static Button button(Act what, LotLine lot, Consumer<Act> act) {
        String words = words(what, lot);
        Button button = new Button(words + "  " + Character.toUpperCase(what.letter()));
        button.setId("act-" + what.letter());
        button.setAccessibleText(words + ": " + lot.title());
        button.setAccessibleHelp(String.valueOf(what.letter()));
        button.setFocusTraversable(false);
        button.setOnAction(pressed -> act.accept(what));
        return button;
    }

    private static String words(Act what, LotLine lot) {
        return switch (what) {
            case SET_ASIDE -> Hands.reserve(lot) ? "Release" : what.words();
            case KEEPSAKE -> Hands.keepsake(lot) ? "No pattern any more" : what.words();
            default -> what.words();
        };
    }
}
