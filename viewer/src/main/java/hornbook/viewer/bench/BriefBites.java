package hornbook.viewer.bench;

import hornbook.catalogue.entry.CautionLevel;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.indexer.brief.MayNot;
import hornbook.indexer.brief.QuirkLine;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** What bites: stops by name first, then stage by stage; what may not be used on it. */
record BriefBites(BenchModel model) {
    List<Node> nodes(BriefAnswer brief, Phrases phrases) {
        List<Node> nodes = new ArrayList<>();
        brief.quirks().stream()
                .filter(q -> q.caution() == CautionLevel.STOP && !q.possible())
                .forEach(q -> nodes.add(quirk(q)));
        List<QuirkLine> maybe = brief.quirks().stream()
                .filter(q -> q.caution() == CautionLevel.STOP && q.possible())
                .toList();
        if (!maybe.isEmpty()) {
            nodes.add(Words.text("Stop until looked at", "heading"));
            maybe.forEach(q -> nodes.add(possible(q, phrases)));
        }
        String stage = "";
        for (QuirkLine quirk : brief.quirks()) {
            if (quirk.caution() != CautionLevel.STOP) {
                if (!quirk.stage().equals(stage)) {
                    stage = quirk.stage();
                    nodes.add(Words.text(phrases.title(stage), "heading"));
                }
                nodes.add(quirk.possible() ? possible(quirk, phrases) : quirk(quirk));
            }
        }
        mayNot(brief, nodes, phrases);
        return nodes;
    }

    private static Node quirk(QuirkLine quirk) {
        boolean stop = quirk.caution() == CautionLevel.STOP;
        VBox box = new VBox(
                Words.text((stop ? "STOP: " : "") + quirk.title(), stop ? "stop" : "quirk-title"),
                Words.text(Words.sentence(quirk.bites()), "words"),
                Words.text("Do: " + quirk.whatToDo(), "words"));
        if (quirk.metOn() != null) {
            box.getChildren().add(Words.text("Met on this horn, " + quirk.metOn(), "heed"));
        }
        box.getStyleClass().addAll("quirk", "quirk-" + quirk.caution().word());
        return box;
    }

    /** One that may bite: by name, with the look that settles it. */
    private Node possible(QuirkLine quirk, Phrases phrases) {
        VBox words = new VBox(Words.text("Possible: " + quirk.title(), "hit-title"));
        String trait = quirk.settledBy();
        if (trait == null) {
            words.getChildren().add(Words.text(Words.sentence(quirk.confirm()), "quiet"));
            words.getStyleClass().addAll("quirk", "quirk-" + quirk.caution().word());
            return words;
        }
        words.getChildren().add(Words.text("Look at: " + phrases.title(trait), "quiet"));
        Tile tile = new Tile(() -> model.choose(trait), words);
        tile.getStyleClass().addAll("link", "possible-" + quirk.caution().word());
        tile.setAccessibleText("Possible: " + quirk.title() + ". Look at " + phrases.title(trait));
        return tile;
    }

    private static void mayNot(BriefAnswer brief, List<Node> nodes, Phrases phrases) {
        if (!brief.mayNot().isEmpty()) {
            nodes.add(Words.text("May not be used on it", "heading"));
            brief.mayNot().forEach(not -> nodes.add(mayNot(not, phrases)));
        }
    }

    private static Node mayNot(MayNot not, Phrases phrases) {
        int equals = not.on().indexOf('=');
        String on = equals < 0
                ? not.on()
                : phrases.value(not.on().substring(0, equals), not.on().substring(equals + 1));
        String instead = not.instead() == null ? "" : " Instead: " + not.instead() + ".";
        return new VBox(
                Words.text(not.title(), "quirk-title"),
                Words.text((not.possible() ? "Perhaps " : "On ") + on + ": " + not.why() + "." + instead, "words"));
    }
}
