package hornbook.viewer.cli;

import hornbook.indexer.fit.CheaperWith;
import hornbook.indexer.fit.FitAnswer;
import hornbook.indexer.fit.FitPlan;
import hornbook.indexer.fit.FitStep;
import hornbook.indexer.fit.Refused;
import hornbook.indexer.fit.ToolWanted;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What fits, as text: the best plan in full, four more in a line or two, then what was refused. */
final class FitText {
    private static final int MORE = 4;
    private static final int REFUSED = 8;

    private final FitAnswer answer;

    FitText(FitAnswer answer) {
        this.answer = answer;
    }

    void print(PrintWriter out) {
        out.println(answer.title() + ": " + String.join(", ", answer.asked()));
        List<FitPlan> plans = answer.plans();
        if (plans.isEmpty()) {
            out.println("\nNOTHING ON HAND WILL DO");
            answer.buy().forEach(line -> out.println("  would serve: " + line));
        } else {
            out.println();
            best(out, plans.getFirst());
        }
        if (plans.size() > 1) {
            out.println("\nOR");
            plans.stream().skip(1).limit(MORE).forEach(plan -> line(out, plan));
            if (plans.size() > 1 + MORE) {
                out.println("  and " + (plans.size() - 1 - MORE) + " more");
            }
        }
        refused(out);
        answer.remarks().forEach(remark -> out.println("! " + remark));
    }

    private static void best(PrintWriter out, FitPlan plan) {
        out.println("TAKE  " + plan.lot() + "  " + plan.title() + place(plan.drawer(), plan.label()) + hand(plan));
        reserve(out, plan);
        if (plan.steps().isEmpty()) {
            out.println("      fits as it is");
        }
        int number = 1;
        for (FitStep step : plan.steps()) {
            out.println("   " + number++ + ". " + step(step));
        }
        out.println("      " + cost(plan));
        with(out, plan);
        plan.askFirst().forEach(ask -> out.println("      ASK FIRST  " + ask));
        if (!plan.assumed().isEmpty()) {
            out.println("      taken as usual, not written down: " + String.join(", ", plan.assumed()));
        }
        if (!plan.shows().isEmpty()) {
            out.println("      it is also: "
                    + plan.shows().entrySet().stream()
                            .map(shown -> shown.getKey() + " " + shown.getValue())
                            .collect(Collectors.joining(", ")));
        }
        plan.mind().forEach(mind -> out.println("      mind: " + mind));
        plan.tools().forEach(tool -> out.println("      fetch " + tool(tool)));
        care(out, plan);
    }

    private static void with(PrintWriter out, FitPlan plan) {
        CheaperWith with = plan.withTool();
        if (with != null) {
            out.println("      cheaper but for " + with.lacks());
            out.println("         then " + plain(with.minutes()) + " min"
                    + (with.charge() > 0 ? " + " + plain(with.charge()) + " for spoiling = " + plain(with.total()) : "")
                    + ": " + String.join(", ", with.steps()));
        }
    }

    private static void care(PrintWriter out, FitPlan plan) {
        plan.steps().stream()
                .filter(step -> step.mind() != null)
                .forEach(step -> out.println("      see to: " + step.mind()));
        if (!plan.cautions().isEmpty()) {
            plan.cautions().forEach(caution -> out.println("      CAUTION  " + caution));
            out.println("      The safety data sheet, local codes and licensed practice come first.");
        }
    }

    private static void line(PrintWriter out, FitPlan plan) {
        Set<String> steps = new LinkedHashSet<>();
        plan.steps().forEach(step -> steps.add(step.title().toLowerCase(java.util.Locale.ROOT)));
        out.println("  " + plan.lot() + "  " + plan.title() + place(plan.drawer(), plan.label()));
        reserve(out, plan);
        out.println("      " + cost(plan) + ": " + (steps.isEmpty() ? "as it is" : String.join(", ", steps))
                + (plan.askFirst().isEmpty() ? "" : "; ask first"));
        with(out, plan);
    }

    private static void reserve(PrintWriter out, FitPlan plan) {
        if (plan.reserve()) {
            out.println("      SET ASIDE" + (plan.left() == null ? "" : ", " + plan.left() + " left after this"));
        }
    }

    private static String step(FitStep step) {
        String from = step.from() == null ? "" : step.from() + " to ";
        String change = step.unit().equals("mm")
                ? ": " + step.dimension() + " " + from + step.to() + " mm (by " + plain(step.amount()) + ")"
                : step.dimension().equals("thread") ? ": " + step.to() : "";
        return step.title() + change + (step.keeps() == null ? "" : ", " + step.keeps()) + "  " + plain(step.minutes())
                + " min" + (step.clocked() ? " by your own clock" : "");
    }

    private static String cost(FitPlan plan) {
        return plain(plan.minutes()) + " min"
                + (plan.charge() > 0 ? " + " + plain(plan.charge()) + " for spoiling = " + plain(plan.total()) : "");
    }

    private static String hand(FitPlan plan) {
        return plan.onHand() == null ? "" : ", " + plan.onHand() + " there";
    }

    private static String tool(ToolWanted tool) {
        String where = tool.drawer() == null ? "" : place(tool.drawer(), tool.label());
        return tool.title()
                + (tool.member() == null ? "" : ", " + tool.member())
                + where
                + (tool.note() == null ? "" : "  (" + tool.note() + ")");
    }

    private static String place(@Nullable String drawer, @Nullable String label) {
        return drawer == null ? "" : "  in " + drawer + (label == null ? "" : " “" + label + "”");
    }

    private void refused(PrintWriter out) {
        if (answer.refused().isEmpty()) {
            return;
        }
        out.println("\nNOT");
        answer.refused().stream().limit(REFUSED).forEach(no -> refused(out, no));
        if (answer.refused().size() > REFUSED) {
            out.println("  and " + (answer.refused().size() - REFUSED) + " more (--json shows them)");
        }
    }

    private static void refused(PrintWriter out, Refused no) {
        out.println("  " + no.lot() + "  " + no.title() + place(no.drawer(), no.label()));
        out.println("      " + no.why());
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
