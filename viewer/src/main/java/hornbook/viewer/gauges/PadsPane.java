package hornbook.viewer.gauges;

import hornbook.shared.pads.Assignment;
import hornbook.shared.pads.PadAnswer;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Which pad goes into which cup of the horns on the bench: as a picture of the tray, then job by job. */
final class PadsPane implements Pane {
    private final CheckBox reserve = new CheckBox("Take from the reserve too");
    private final Consumer<String> pull;
    private final PadsModel model;
    private final Sheet sheet;

    /** @param pull shows a drawer in its cabinet */
    PadsPane(PadsModel model, Consumer<String> pull) {
        this.model = model;
        this.pull = pull;
        sheet = new Sheet(
                Words.text("For every open job whose cups are measured, all from one tray.", "said"),
                reserve,
                Words.text(
                        "\u00bd  a half step off its ruled size\n\u2715  none left within half a millimetre", "quiet"));
        reserve.setOnAction(pressed -> model.takeFromReserve(reserve.isSelected()));
        model.onChange(this::draw);
    }

    @Override
    public String title() {
        return "Pads";
    }

    @Override
    public Node node() {
        return sheet;
    }

    @Override
    public void focus() {
        reserve.requestFocus();
    }

    @Override
    public void shown() {
        model.refresh();
    }

    private void draw(PadsView view) {
        List<Node> nodes = new ArrayList<>();
        if (view.trouble() != null) {
            nodes.add(Words.text(view.trouble(), "banner"));
        }
        if (view.answer() != null) {
            draw(view.answer(), nodes);
        } else if (view.trouble() == null) {
            nodes.add(Words.text("Laying the pads out\u2026", "quiet"));
        }
        sheet.answer(nodes);
    }

    private void draw(PadAnswer answer, List<Node> nodes) {
        if (answer.assignments().isEmpty() && answer.shortages().isEmpty()) {
            nodes.add(Words.text("No open job has a measured cup that waits for a pad. Measure cups in Jobs.", "said"));
            return;
        }
        int cups = answer.assignments().size() + answer.shortages().size();
        nodes.add(Words.text(
                answer.assignments().size() + " of " + cups + " cups served, " + answer.halfSteps()
                        + " a half step off",
                "big"));
        answer.shortages()
                .forEach(s -> nodes.add(Words.text(
                        "Short: " + s.size().toPlainString() + " mm for " + s.cup()
                                + (s.job() == null ? "" : " of " + s.job()) + ". " + Words.sentence(s.why()),
                        "banner")));
        nodes.add(new TrayDrawing(answer));
        answer.stranded().forEach(line -> nodes.add(Words.text(Words.sentence(line), "heed")));
        answer.remarks().forEach(line -> nodes.add(Words.text(Words.sentence(line), "quiet")));
        jobs(answer).forEach((job, served) -> {
            nodes.add(Sheet.heading(job));
            served.forEach(a -> nodes.add(row(a)));
        });
    }

    private static Map<String, List<Assignment>> jobs(PadAnswer answer) {
        Map<String, List<Assignment>> jobs = new LinkedHashMap<>();
        answer.assignments()
                .forEach(a -> jobs.computeIfAbsent(Objects.requireNonNullElse(a.job(), ""), j -> new ArrayList<>())
                        .add(a));
        return jobs;
    }

    private Node row(Assignment a) {
        Label size = Words.text(a.size().toPlainString(), "count");
        size.getStyleClass().add(a.halfSteps() == 0 ? "some" : "none");
        Label words = Words.text(
                a.cup() + ", measured " + a.diameter().toPlainString()
                        + (a.halfSteps() == 0 ? "" : ", ruled " + a.ruled().toPlainString()) + "  \u00b7  " + a.title()
                        + " in " + a.drawer(),
                "said");
        HBox.setHgrow(words, Priority.ALWAYS);
        Tile row = new Tile(() -> pull.accept(a.drawer()), size, words);
        row.setAccessibleText(words.getText());
        row.getStyleClass().add("pad-row");
        return row;
    }
}
