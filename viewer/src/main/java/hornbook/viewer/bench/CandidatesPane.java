package hornbook.viewer.bench;

import hornbook.catalogue.identify.Answer;
import hornbook.catalogue.identify.Candidate;
import hornbook.catalogue.identify.Comparison;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What it may be: a sentence, the candidates with unlisted among them, what parts the first two, what does not fit. */
final class CandidatesPane extends ScrollPane {
    static final String UNLISTED = "";

    private static final int SHOWN = 6;
    private static final int DIFFERENCES = 4;

    private final BenchModel model;
    private final VBox list = new VBox();

    private @Nullable Weighed drawn;
    private @Nullable String open;

    CandidatesPane(BenchModel model) {
        this.model = model;
        list.getStyleClass().add("candidates");
        setContent(list);
        setFitToWidth(true);
        setFocusTraversable(false);
    }

    void show(BenchView view, Phrases phrases) {
        Weighed weighed = view.weighed();
        if (weighed == null || weighed == drawn && Objects.equals(open, view.open())) {
            return;
        }
        drawn = weighed;
        open = view.open();
        Answer answer = weighed.answer();
        List<Node> nodes = new ArrayList<>();
        nodes.add(Words.text(Words.sentence(answer.says()), "says"));
        answer.remarks().forEach(remark -> nodes.add(Words.text(Words.sentence(remark), "banner")));
        if (!answer.odd().isEmpty()) {
            nodes.add(Words.text(odd(answer, phrases), "banner"));
        }
        if (!answer.candidates().isEmpty()) {
            nodes.add(cups());
        }
        nodes.addAll(rows(view, answer, phrases));
        Comparison differ = weighed.differ();
        if (differ != null && !differ.differ().isEmpty()) {
            nodes.addAll(differ(view, differ, phrases));
        }
        list.getChildren().setAll(nodes);
    }

    private Button cups() {
        Button cups = new Button("Cups of the first  C");
        cups.setId("cups");
        cups.setAccessibleHelp("Its pads and openings on the drawing, with what was read on this horn; key C");
        cups.setOnAction(pressed -> model.cups());
        return cups;
    }

    private static String odd(Answer answer, Phrases phrases) {
        return "All fits the first but: "
                + answer.odd().stream().map(phrases::title).collect(Collectors.joining(", ")) + ".";
    }

    private List<Node> rows(BenchView view, Answer answer, Phrases phrases) {
        List<Candidate> shown = answer.candidates().stream()
                .filter(c -> answer.candidates().indexOf(c) < SHOWN
                        || c.id().equals(view.horn().watched()))
                .toList();
        List<Node> nodes = new ArrayList<>();
        boolean placed = false;
        for (Candidate candidate : shown) {
            if (!placed && answer.unlisted() > candidate.probability()) {
                unlisted(answer, nodes);
                placed = true;
            }
            nodes.add(new CandidateRow(
                    candidate.id(),
                    candidate.title(),
                    Phrases.years(candidate),
                    candidate.probability(),
                    () -> model.open(candidate.id())));
            if (candidate.id().equals(open)) {
                nodes.add(why(view, candidate, phrases));
            }
        }
        if (!placed) {
            unlisted(answer, nodes);
        }
        return nodes;
    }

    private void unlisted(Answer answer, List<Node> nodes) {
        nodes.add(new CandidateRow(
                "unlisted", "A horn that is not listed", "", answer.unlisted(), () -> model.open(UNLISTED)));
        if (UNLISTED.equals(open)) {
            Button entry = new Button("Make an entry from this horn");
            entry.setId("make-entry");
            entry.setOnAction(pressed -> model.side(new BenchView.Side.Entry()));
            nodes.add(box(List.of(
                    Words.text(
                            "No entry describes it, or one does not say enough. The brief goes by what was seen.",
                            "words"),
                    entry)));
        }
    }

    private Node why(BenchView view, Candidate candidate, Phrases phrases) {
        List<Node> lines = new ArrayList<>();
        candidate.why().forEach(reason -> {
            VBox line = new VBox(
                    Words.text(phrases.answer(reason.answer(), view.horn()), "words"),
                    Words.text(Phrases.weight(reason.logOdds()), reason.logOdds() < 0 ? "against" : "for"));
            lines.add(line);
        });
        if (lines.isEmpty()) {
            lines.add(
                    Words.text("Nothing was seen yet that tells: it is only how often such a horn comes in.", "words"));
        }
        Button isThis = new Button("It is this");
        isThis.setId("it-is-this");
        isThis.getStyleClass().add("main-act");
        isThis.setOnAction(pressed -> model.side(new BenchView.Side.Confirm(candidate.id(), candidate.title())));
        Button cups = new Button("Its cups");
        cups.setId("its-cups");
        cups.setOnAction(pressed -> model.cups(candidate.id()));
        HBox acts = new HBox(isThis, cups);
        acts.getStyleClass().add("card-acts");
        lines.addFirst(acts);
        return box(lines);
    }

    private static Node box(List<Node> lines) {
        VBox box = new VBox();
        box.getStyleClass().add("why-box");
        box.getChildren().setAll(lines);
        return box;
    }

    private List<Node> differ(BenchView view, Comparison differ, Phrases phrases) {
        List<Node> nodes = new ArrayList<>();
        nodes.add(Words.text("What parts the first two", "heading"));
        differ.differ().stream()
                .filter(d -> !view.horn().lookedAt(d.trait()))
                .limit(DIFFERENCES)
                .map(d -> difference(d, phrases))
                .forEach(nodes::add);
        return nodes.size() == 1 ? List.of() : nodes;
    }

    private Node difference(Comparison.Difference difference, Phrases phrases) {
        String values = difference.values().entrySet().stream()
                .map(e -> phrases.title(e.getKey()) + ": " + e.getValue())
                .collect(Collectors.joining("\n"));
        var tile = new hornbook.viewer.widget.Tile(
                () -> model.choose(difference.trait()),
                new VBox(Words.text(phrases.title(difference.trait()), "hit-title"), Words.text(values, "quiet")));
        tile.getStyleClass().add("link");
        tile.setAccessibleText("Look at " + phrases.title(difference.trait()) + ". " + values);
        return tile;
    }
}
