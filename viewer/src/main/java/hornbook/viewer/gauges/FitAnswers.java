package hornbook.viewer.gauges;

import hornbook.indexer.fit.CheaperWith;
import hornbook.indexer.fit.FitAnswer;
import hornbook.indexer.fit.FitPlan;
import hornbook.indexer.fit.FitStep;
import hornbook.indexer.fit.Refused;
import hornbook.indexer.fit.ToolWanted;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** A fit answer as it is set on the screen: the best plan in full, the others in a line, what will not do and why. */
final class FitAnswers {
    private static final String DEFERS = "The safety data sheet, local codes and licensed practice come first.";
    private static final int MOST_OTHERS = 5;
    private static final int MOST_REFUSED = 10;

    private final FitAnswer answer;
    private final Consumer<String> pull;
    private final List<Node> nodes = new ArrayList<>();

    FitAnswers(FitAnswer answer, Consumer<String> pull) {
        this.answer = answer;
        this.pull = pull;
    }

    List<Node> nodes() {
        say(answer.title() + ": " + String.join(", ", answer.asked()), "big");
        if (answer.plans().isEmpty()) {
            say("Nothing on hand will do.", "heed");
            answer.buy().forEach(line -> say("Would serve: " + line, "said"));
        } else {
            best(answer.plans().getFirst());
            others();
        }
        refused();
        answer.remarks().forEach(line -> say(Words.sentence(line), "quiet"));
        return nodes;
    }

    private void best(FitPlan plan) {
        nodes.add(place("Take " + plan.title(), plan.drawer(), plan.label(), plan.onHand() + " there, " + plan.lot()));
        if (plan.reserve()) {
            say("Set aside as reserve" + (plan.left() == null ? "." : ": " + plan.left() + " would be left."), "heed");
        }
        if (plan.steps().isEmpty()) {
            say("It fits as it is.", "said");
        }
        PieceDrawing.of(plan).ifPresent(nodes::add);
        int number = 1;
        for (FitStep step : plan.steps()) {
            say(number++ + ".  " + step(step), "plan-step");
        }
        say(minutes(plan), "thread-name");
        with(plan.withTool());
        plan.askFirst().forEach(line -> say("Ask first: " + line, "heed"));
        plan.mind().forEach(line -> say("Mind: " + line, "said"));
        if (!plan.assumed().isEmpty()) {
            say("Taken as usual, not written down: " + String.join(", ", plan.assumed()), "sizes");
        }
        plan.tools().forEach(tool -> nodes.add(tool(tool)));
        plan.cautions().forEach(line -> say("Caution: " + line, "heed"));
        if (!plan.cautions().isEmpty()) {
            say(DEFERS, "sizes");
        }
    }

    private void with(@Nullable CheaperWith with) {
        if (with != null) {
            say(
                    Words.sentence("cheaper but for " + with.lacks())
                            + String.format(Locale.ROOT, " With it %.1f in all: ", with.total())
                            + String.join(", ", with.steps()),
                    "heed");
        }
    }

    private static String step(FitStep step) {
        String size = step.from() == null ? step.to() : step.from() + " to " + step.to();
        return step.title()
                + (step.unit().equals("mm") ? ": " + step.dimension() + " " + size + " mm" : "")
                + (step.keeps() == null ? "" : ", " + step.keeps())
                + String.format(Locale.ROOT, "  (%.1f min%s)", step.minutes(), step.clocked() ? ", by your clock" : "");
    }

    private static String minutes(FitPlan plan) {
        return plan.charge() == 0
                ? String.format(Locale.ROOT, "%.1f min of work", plan.minutes())
                : String.format(
                        Locale.ROOT, "%.1f min of work, %.0f charged for spoiling", plan.minutes(), plan.charge());
    }

    private Node tool(ToolWanted tool) {
        String what = "Fetch " + tool.title() + (tool.member() == null ? "" : ", " + tool.member());
        return place(what, tool.drawer(), tool.label(), tool.note() == null ? "" : tool.note());
    }

    private void others() {
        List<FitPlan> rest = answer.plans().subList(1, Math.min(answer.plans().size(), MOST_OTHERS + 1));
        if (!rest.isEmpty()) {
            nodes.add(Sheet.heading("Or"));
        }
        rest.forEach(plan -> nodes.add(place(
                plan.title(),
                plan.drawer(),
                plan.label(),
                minutes(plan) + ": "
                        + (plan.steps().isEmpty()
                                ? "as it is"
                                : String.join(
                                        ", ",
                                        plan.steps().stream()
                                                .map(s -> s.title().toLowerCase(Locale.ROOT))
                                                .toList())))));
    }

    private void refused() {
        if (!answer.refused().isEmpty()) {
            nodes.add(Sheet.heading("Not"));
        }
        answer.refused().stream().limit(MOST_REFUSED).forEach(this::refuse);
    }

    private void refuse(Refused lot) {
        nodes.add(place(lot.title(), lot.drawer(), lot.label(), Words.sentence(lot.why())));
    }

    /** A thing and the drawer it lies in, which pressing it opens. */
    private Node place(String what, @Nullable String drawer, @Nullable String label, String more) {
        VBox words = new VBox(Words.text(what, "plan-title"), Words.text(more, "sizes"));
        HBox.setHgrow(words, Priority.ALWAYS);
        if (drawer == null) {
            return new HBox(words);
        }
        Label where = Words.text(label == null || label.isBlank() ? drawer : label, "label-plate");
        Tile row = new Tile(() -> pull.accept(drawer), words, where);
        row.getStyleClass().add("pad-row");
        row.setAccessibleText(what + ", in " + where.getText() + ". " + more);
        return row;
    }

    private void say(String words, String style) {
        nodes.add(Words.text(words, style));
    }
}
