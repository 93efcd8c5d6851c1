package hornbook.viewer.bench;

import hornbook.catalogue.entry.TakingDown;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.scene.Node;

/** How it is built: threads, taking down, pads, key heights. */
final class BriefBuild {
    private static final double SURE = 0.9;

    private BriefBuild() {}

    static List<Node> nodes(BriefAnswer brief, Phrases phrases) {
        List<Node> nodes = new ArrayList<>();
        if (!brief.threads().isEmpty()) {
            nodes.add(Words.text("Threads", "heading"));
            brief.threads()
                    .forEach(t -> nodes.add(Words.text(
                            t.use().replace('-', ' ') + ": " + t.designation() + sureness(t.probability()), "words")));
        }
        if (!brief.takingDown().isEmpty()) {
            String of = brief.takingDownOf() == null ? "" : ", as on " + phrases.title(brief.takingDownOf());
            nodes.add(Words.text("Taking down" + of, "heading"));
            brief.takingDown().forEach(step -> nodes.add(Words.text(step(step), "words")));
        }
        if (!brief.pads().isEmpty()) {
            nodes.add(Words.text("Pads, mm", "heading"));
            nodes.add(Words.text(sizes(brief.pads(), phrases), "words"));
        }
        if (!brief.keyHeights().isEmpty()) {
            nodes.add(Words.text("Key heights, mm", "heading"));
            nodes.add(Words.text(sizes(brief.keyHeights(), phrases), "words"));
        }
        if (nodes.isEmpty()) {
            nodes.add(Words.text("Not known before it is clearer what horn it is.", "quiet"));
        }
        return nodes;
    }

    private static String sureness(double probability) {
        return probability >= SURE ? "" : String.format(Locale.ROOT, " (%.0f in 10)", 10 * probability);
    }

    private static String step(TakingDown step) {
        return step.step() + ". " + step.piece() + ": " + step.how()
                + (step.reason() == null ? "" : " (" + step.reason() + ")");
    }

    private static String sizes(Map<String, Double> sizes, Phrases phrases) {
        return sizes.entrySet().stream()
                .map(e -> phrases.title(e.getKey()) + "\u00a0" + e.getValue())
                .collect(Collectors.joining(",  "));
    }
}
