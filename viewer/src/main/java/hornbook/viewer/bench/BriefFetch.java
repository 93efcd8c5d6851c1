package hornbook.viewer.bench;

import hornbook.indexer.brief.BriefAnswer;
import hornbook.indexer.brief.Fetch;
import hornbook.indexer.brief.QuirkLine;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * What to fetch from which drawer, and how it can hurt.
 *
 * @param pull shows a drawer in its cabinet
 */
record BriefFetch(Consumer<String> pull) {
    private static final String DEFERS =
            "These are reminders. The safety data sheet, local codes and licensed practice go before them.";

    List<Node> nodes(BriefAnswer brief) {
        Set<String> sure = brief.quirks().stream()
                .filter(q -> !q.possible())
                .map(QuirkLine::id)
                .collect(Collectors.toSet());
        List<Node> nodes = new ArrayList<>();
        fetch("For what bites", brief, f -> f.wantedBy().stream().anyMatch(sure::contains), nodes);
        fetch("Spares for it", brief, f -> f.wantedBy().isEmpty(), nodes);
        fetch(
                "If it turns out so",
                brief,
                f -> !f.wantedBy().isEmpty() && f.wantedBy().stream().noneMatch(sure::contains),
                nodes);
        if (!brief.cautions().isEmpty()) {
            nodes.add(Words.text("Take care", "heading"));
            nodes.add(Words.text(DEFERS, "heed"));
            brief.cautions()
                    .forEach(c -> nodes.add(new VBox(
                            Words.text(c.title(), "quirk-title"), Words.text(Words.sentence(c.text()), "words"))));
        }
        return nodes;
    }

    private void fetch(String heading, BriefAnswer brief, Predicate<Fetch> which, List<Node> nodes) {
        List<Node> rows = brief.fetch().stream().filter(which).map(this::fetch).toList();
        if (!rows.isEmpty()) {
            nodes.add(Words.text(heading, "heading"));
            nodes.addAll(rows);
        }
    }

    private Node fetch(Fetch fetch) {
        Label count = new Label(fetch.onHand());
        count.getStyleClass().addAll("count", fetch.onHand().equals("0") ? "none" : "some");
        VBox words = new VBox(Words.text(fetch.title(), "hit-title"));
        if (fetch.substitute()) {
            words.getChildren().add(Words.text("Not quite what is wanted: measure first", "heed"));
        }
        if (fetch.note() != null) {
            words.getChildren().add(Words.text(Words.sentence(fetch.note()), "quiet"));
        }
        String drawer = fetch.drawer();
        if (drawer == null) {
            words.getChildren().add(Words.text("Not in the shop", "heed"));
        } else {
            String label = fetch.label() == null || fetch.label().isBlank() ? "no label" : fetch.label();
            Label plate = Words.text(label, "label-plate");
            plate.setMaxWidth(Region.USE_PREF_SIZE);
            words.getChildren().add(plate);
        }
        HBox.setHgrow(words, Priority.ALWAYS);
        Tile tile = new Tile(() -> open(drawer), count, words);
        tile.getStyleClass().addAll("link", "fetch-row");
        tile.setId("fetch-" + (fetch.lot() == null ? fetch.what() : fetch.lot()));
        tile.setAccessibleText(fetch.onHand() + " " + fetch.title()
                + (drawer == null ? ", not in the shop" : ", in " + fetch.label() + "; shows the drawer"));
        return tile;
    }

    private void open(@Nullable String drawer) {
        if (drawer != null) {
            pull.accept(drawer);
        }
    }
}
