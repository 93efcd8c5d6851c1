package hornbook.viewer.bench;

import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitKind;
import hornbook.catalogue.picture.Pictures;
import hornbook.viewer.widget.PictureView;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;

/** The answers that are always there, and the ways round the question. */
final class LookFoot extends EvenRow {
    /** More in a row leave no room for a picture beside the words. */
    private static final int MOST_WITH_PICTURE = 3;

    private final BenchModel model;
    private final Pictures pictures;

    LookFoot(BenchModel model, Pictures pictures) {
        this.model = model;
        this.pictures = pictures;
        getStyleClass().add("look-foot");
    }

    void show(Trait trait, Asking asking) {
        List<Node> tiles = new ArrayList<>();
        if (asking.several()) {
            tiles.add(tile("take-marked", taken(trait, asking), "Enter", model::done));
        }
        Tile cannotTell = tile("cant-tell", "Can\u2019t tell", "0", model::cannotTell);
        tiles.add(cannotTell);
        if (trait.kind() == TraitKind.ONE) {
            tiles.add(tile(
                    "several",
                    asking.several() ? "Only one" : "One of several",
                    "",
                    () -> model.several(!asking.several())));
        }
        if (trait.absentWhen() != null) {
            tiles.add(tile("not-there", "Has none", "", model::notThere));
        }
        tiles.add(tile("skip", "Not now", "S", model::skip));
        tiles.add(tile("wrong", "What is wrong", "", () -> model.side(new BenchView.Side.Wrong())));
        if (tiles.size() <= MOST_WITH_PICTURE) {
            cannotTell.getChildren().addFirst(eye());
        }
        show(tiles);
    }

    private static String taken(Trait trait, Asking asking) {
        long marked = asking.marked().size();
        if (marked == 0) {
            return trait.kind() == TraitKind.MANY ? "Press what is there" : "Press what it may be";
        }
        return trait.kind() == TraitKind.MANY ? "Take these" : "One of these " + marked;
    }

    private Node eye() {
        PictureView eye = new PictureView(pictures.cantTell());
        eye.getStyleClass().add("small-picture");
        return eye;
    }

    private static Tile tile(String id, String words, String key, Runnable press) {
        Label hint = new Label(key);
        hint.getStyleClass().add("key-hint");
        Tile tile = new Tile(press, Words.text(words, "tile-words"), hint);
        hint.setManaged(!key.isEmpty());
        tile.getStyleClass().add("foot-tile");
        tile.setId(id);
        tile.setAccessibleText(words);
        tile.setAccessibleHelp(key.isEmpty() ? null : "Key " + key);
        tile.setMaxHeight(Double.MAX_VALUE);
        return tile;
    }
}
