package hornbook.viewer.bench;

import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.entry.TakingDown;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.indexer.brief.Fetch;
import hornbook.indexer.brief.MayNot;
import hornbook.indexer.brief.PastJob;
import hornbook.indexer.brief.QuirkLine;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

/** A part of a brief as nodes. */
final class BriefNodes {
    private static final String DEFERS =
            "These are reminders. The safety data sheet, local codes and licensed practice go before them.";

    private final BenchModel model;
    private final Consumer<String> pull;
    private final Consumer<String> openJob;

    /**
     * @param pull shows a drawer in its cabinet
     * @param openJob opens the card of a job
     */
    BriefNodes(BenchModel model, Consumer<String> pull, Consumer<String> openJob) {
        this.model = model;
        this.pull = pull;
        this.openJob = openJob;
    }

    List<Node> of(BriefPart part, BriefAnswer brief, Phrases phrases) {
        return switch (part) {
            case BITES -> bites(brief, phrases);
            case FETCH -> fetch(brief);
            case BUILD -> build(brief, phrases);
            case BEFORE -> before(brief, phrases);
        };
    }

    private List<Node> bites(BriefAnswer brief, Phrases phrases) {
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

    private List<Node> fetch(BriefAnswer brief) {
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

    private void open(@org.jspecify.annotations.Nullable String drawer) {
        if (drawer != null) {
            pull.accept(drawer);
        }
    }

    private static List<Node> build(BriefAnswer brief, Phrases phrases) {
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
        return probability >= 0.9 ? "" : String.format(Locale.ROOT, " (%.0f in 10)", 10 * probability);
    }

    private static String step(TakingDown step) {
        return step.step() + ". " + step.piece() + ": " + step.how()
                + (step.reason() == null ? "" : " (" + step.reason() + ")");
    }

    private static String sizes(java.util.Map<String, Double> sizes, Phrases phrases) {
        return sizes.entrySet().stream()
                .map(e -> phrases.title(e.getKey()) + "\u00a0" + e.getValue())
                .collect(Collectors.joining(",  "));
    }

    private List<Node> before(BriefAnswer brief, Phrases phrases) {
        List<Node> nodes = new ArrayList<>();
        brief.jobs().forEach(job -> nodes.add(job(job, phrases)));
        if (nodes.isEmpty()) {
            nodes.add(Words.text("Nothing like it was here before.", "quiet"));
        }
        return nodes;
    }

    private Node job(PastJob job, Phrases phrases) {
        String went = job.went() == null ? "" : "Went " + job.went() + ". ";
        String minutes = job.minutes() == null ? "" : "  \u00b7  " + job.minutes() + " min";
        VBox words = new VBox(
                Words.text(job.tookIn().getYear() + "  " + job.kind() + minutes, "hit-title"),
                Words.text(phrases.title(job.model()) + ": " + job.complaint(), "words"));
        if (!(went + job.wentNote()).isBlank()) {
            words.getChildren().add(Words.text(went + Words.sentence(job.wentNote()), "words"));
        }
        if (!job.measured().isEmpty()) {
            words.getChildren().add(Words.text(String.join("; ", job.measured()), "quiet"));
        }
        Tile tile = new Tile(() -> openJob.accept(job.id()), words);
        HBox.setHgrow(words, Priority.ALWAYS);
        tile.getStyleClass().add("link");
        tile.setId("past-" + job.id());
        tile.setAccessibleText(job.tookIn() + ", " + job.kind() + ", " + phrases.title(job.model()));
        return tile;
    }
}
