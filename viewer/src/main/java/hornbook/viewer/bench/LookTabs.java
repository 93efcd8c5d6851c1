package hornbook.viewer.bench;

import hornbook.catalogue.identify.NextLook;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The best looks to choose from, and the way to all of them. */
final class LookTabs extends EvenRow {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final int SHOWN = 3;

    private final BenchModel model;

    LookTabs(BenchModel model) {
        this.model = model;
        getStyleClass().add("look-tabs");
    }

    void show(BenchView view, String asked, Phrases phrases) {
        List<String> traits = Stream.concat(
                        Stream.of(asked).filter(a -> view.look(a).isEmpty()),
                        view.looks().stream().map(NextLook::trait))
                .limit(SHOWN)
                .toList();
        List<String> shown = new ArrayList<>(traits);
        if (!shown.contains(asked) && !asked.isEmpty()) {
            shown.set(SHOWN - 1, asked);
        }
        List<Tile> tiles = new ArrayList<>();
        shown.forEach(trait -> tiles.add(tab(trait, phrases.title(trait), trait.equals(asked))));
        Tile all = tile("All looks", () -> model.side(new BenchView.Side.Choose()));
        all.setId("all-looks");
        tiles.add(all);
        show(tiles);
    }

    private Tile tab(String trait, String title, boolean chosen) {
        Tile tab = tile(title, () -> model.choose(trait));
        tab.setId("tab-" + trait);
        tab.pseudoClassStateChanged(CHOSEN, chosen);
        tab.setAccessibleText(title + (chosen ? ", asked now" : ""));
        return tab;
    }

    private static Tile tile(String title, Runnable press) {
        Label words = Words.text(title, "tab-words");
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        Tile tile = new Tile(press, words);
        tile.getStyleClass().add("look-tab");
        tile.setMaxHeight(Double.MAX_VALUE);
        return tile;
    }
}
