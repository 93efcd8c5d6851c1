package hornbook.viewer.year;

import hornbook.shared.year.YearAnswer;
import hornbook.shared.year.YearAnswer.MonthLine;
import hornbook.viewer.widget.ChanceBar;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** What a year was like, part by part, as on the printed page. */
final class YearPage {
    private static final int MOST = 8;
    private static final double MINUTES = 60;

    private final UnaryOperator<String> titles;
    private final List<Node> nodes = new ArrayList<>();

    /** @param titles what a thing or task is called */
    YearPage(UnaryOperator<String> titles) {
        this.titles = titles;
    }

    List<Node> of(YearAnswer year) {
        add(
                "%d jobs came in, %d went home, %.0f h clocked. Used for %s, deliveries for %s."
                        .formatted(
                                year.cameIn(),
                                year.done(),
                                year.minutes() / MINUTES,
                                year.usedCost().toPlainString(),
                                year.spent().toPlainString()),
                "found");
        year.remarks().forEach(remark -> add(Words.sentence(remark), "note"));
        add("Jobs: came in (full), went home (open)", "heading");
        nodes.add(new MonthPlot(
                "year-jobs", months(year, MonthLine::cameIn), months(year, MonthLine::done), "Came in and went home"));
        add("Hours clocked", "heading");
        nodes.add(new MonthPlot("year-hours", months(year, m -> m.minutes() / MINUTES), List.of(), "Hours clocked"));
        work(year);
        promises(year);
        stores(year);
        return nodes;
    }

    private static List<Double> months(YearAnswer year, ToDoubleFunction<MonthLine> of) {
        return year.months().stream().map(of::applyAsDouble).toList();
    }

    private void work(YearAnswer year) {
        double most = year.kinds().stream().mapToInt(k -> k.minutes()).max().orElse(0);
        bars(
                "Hours by kind of job",
                year.kinds().stream()
                        .map(k -> bar(k.kind(), k.minutes() / most, hours(k.minutes()) + jobs(k.done()) + " done")));
        double longest = year.tasks().stream().mapToInt(t -> t.minutes()).max().orElse(0);
        bars(
                "Hours by task, the longest",
                year.tasks().stream()
                        .map(t -> bar(
                                titles.apply(t.task()), t.minutes() / longest, hours(t.minutes()) + jobs(t.jobs()))));
    }

    private void promises(YearAnswer year) {
        bars(
                "Late: " + year.late().size() + ", with " + year.promised() + " promised",
                year.late().stream()
                        .map(l -> line(
                                l.job() + "  " + l.kind() + ", promised " + l.promised(),
                                l.days() + " days late" + (l.done() == null ? ", still here" : ""))));
        bars(
                "A fifth or more over the quote: " + year.overrun().size() + " of " + year.quoted(),
                year.overrun().stream()
                        .map(o -> line(
                                o.job() + "  " + o.kind(),
                                "quoted " + o.quotedMin() + " min, took " + o.tookMin() + " (+" + o.overPercent()
                                        + " %)")));
    }

    private void stores(YearAnswer year) {
        bars(
                "Used, the dearest",
                year.used().stream()
                        .map(u -> line(
                                titles.apply(u.item()),
                                u.pieces() + " used, "
                                        + (u.cost() == null
                                                ? "price not known"
                                                : u.cost().toPlainString()))));
        double slowest = year.suppliers().stream()
                .mapToInt(s -> s.typicalDays() == null ? 0 : s.typicalDays())
                .max()
                .orElse(0);
        bars(
                "Suppliers, the slowest first: days as a rule",
                year.suppliers().stream()
                        .map(s -> s.typicalDays() == null
                                ? line(s.name(), "days not written down")
                                : bar(
                                        s.name(),
                                        s.typicalDays() / slowest,
                                        s.typicalDays() + " days, " + s.slowest() + " at worst")));
    }

    private void bars(String heading, Stream<Node> rows) {
        List<Node> all = rows.toList();
        add(heading, "heading");
        if (all.isEmpty()) {
            add("None.", "words");
        }
        nodes.addAll(all.subList(0, Math.min(MOST, all.size())));
        if (all.size() > MOST) {
            add("and " + (all.size() - MOST) + " more, in the table (CSV)", "quiet");
        }
    }

    private static Node bar(String name, double part, String says) {
        ChanceBar bar = new ChanceBar(Double.isFinite(part) ? part : 0);
        HBox.setHgrow(bar, Priority.ALWAYS);
        return row(Words.text(name, "bar-name"), bar, Words.text(says, "bar-says"));
    }

    private static Node line(String name, String says) {
        Label words = Words.text(name, "words");
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        return row(words, Words.text(says, "quiet"));
    }

    private static Node row(Node... nodes) {
        HBox row = new HBox(nodes);
        row.getStyleClass().add("bar-row");
        return row;
    }

    private static String hours(int minutes) {
        return String.format(Locale.ROOT, "%.0f h, ", minutes / MINUTES);
    }

    private static String jobs(int count) {
        return count == 1 ? "1 job" : count + " jobs";
    }

    private void add(String words, String style) {
        nodes.add(Words.text(words, style));
    }
}
