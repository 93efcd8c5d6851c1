package hornbook.viewer.paper.year;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.shared.shop.Counted;
import hornbook.shared.year.YearAnswer;
import hornbook.shared.year.YearAnswer.MonthLine;
import hornbook.viewer.paper.Block;
import hornbook.viewer.paper.Grid;
import hornbook.viewer.paper.Headline;
import hornbook.viewer.paper.Piece;
import hornbook.viewer.paper.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What stands on the page of a year, piece by piece. */
record YearPieces(Catalogue catalogue) {
    private static final double HEAD = 11;
    private static final double BODY = 8;
    private static final double MONTHS_TALL = 26;
    private static final double SHARES_TALL = 28;
    private static final int MOST = 8;
    private static final double MINUTES = 60;
    private static final double NAMES = 0.42;

    /** The year in one sentence. */
    static String says(YearAnswer year) {
        return String.format(
                "%s came in, handed back %d, came to nothing %d. %.0f hours clocked. %s used, which cost"
                        + " %s; deliveries for %s. Up to %s.",
                Counted.of(year.cameIn(), "job"),
                year.done(),
                year.declined(),
                year.minutes() / MINUTES,
                Counted.of(year.months().stream().mapToInt(MonthLine::pieces).sum(), "piece"),
                year.usedCost().toPlainString(),
                year.spent().toPlainString(),
                year.upTo());
    }

    List<Piece> of(YearAnswer year, HonestyAnswer estimates) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Headline("Jobs: came in (full), went home (open)", HEAD));
        pieces.add(new MonthBars(months(year, MonthLine::cameIn), months(year, MonthLine::done), MONTHS_TALL));
        pieces.add(new Headline("Hours clocked", HEAD));
        pieces.add(new MonthBars(months(year, m -> m.minutes() / MINUTES), List.of(), MONTHS_TALL));
        pieces.add(new Headline("Hours by kind of job", HEAD));
        pieces.add(kinds(year));
        pieces.add(new Headline("Hours by task, the longest", HEAD));
        pieces.add(tasks(year));
        pieces.add(new Headline("Used, the dearest", HEAD));
        pieces.add(used(year));
        pieces.add(new Headline("Late: " + year.late().size() + ", with " + year.promised() + " promised", HEAD));
        pieces.add(late(year));
        pieces.add(new Headline(
                "A fifth or more over the quote: " + year.overrun().size() + " of " + year.quoted(), HEAD));
        pieces.add(overrun(year));
        pieces.add(new Headline("Suppliers: usual days (bar), slowest (line)", HEAD));
        pieces.add(suppliers(year));
        pieces.add(new Headline("Jobs that took no longer than P50, P80", HEAD));
        pieces.add(honesty(estimates));
        year.remarks().forEach(remark -> pieces.add(new Words(remark + ".", BODY)));
        return pieces;
    }

    private static List<Double> months(YearAnswer year, ToDoubleFunction<MonthLine> of) {
        return year.months().stream().map(of::applyAsDouble).toList();
    }

    private static RowBars kinds(YearAnswer year) {
        return new RowBars(
                year.kinds().stream()
                        .map(k -> row(k.kind(), k.minutes(), Counted.of(k.done(), "job")))
                        .toList(),
                NAMES);
    }

    private RowBars tasks(YearAnswer year) {
        return new RowBars(
                year.tasks().stream()
                        .limit(MOST)
                        .map(t -> row(title(t.task()), t.minutes(), Counted.of(t.jobs(), "job")))
                        .toList(),
                NAMES);
    }

    private static RowBars.Row row(String name, int minutes, String more) {
        return new RowBars.Row(name, minutes, 0, String.format("%.0f h, %s", minutes / MINUTES, more));
    }

    private String title(String id) {
        return catalogue.entry(id).map(Entry::title).orElse(id);
    }

    private Piece used(YearAnswer year) {
        return table(
                List.of("what", "pieces", "cost"),
                List.of(0.6, 0.18, 0.22),
                year.used().stream()
                        .map(u -> List.of(
                                title(u.item()),
                                String.valueOf(u.pieces()),
                                u.cost() == null ? "not known" : u.cost().toPlainString()))
                        .toList());
    }

    private static RowBars suppliers(YearAnswer year) {
        return new RowBars(
                year.suppliers().stream()
                        .map(s -> new RowBars.Row(
                                s.name(),
                                s.typicalDays() == null ? 0 : s.typicalDays(),
                                s.slowest() == null ? 0 : s.slowest(),
                                s.typicalDays() == null
                                        ? "days not written down"
                                        : s.typicalDays() + " d, " + s.slowest() + " d; " + s.deliveries() + "x"))
                        .toList(),
                NAMES);
    }

    private static Piece late(YearAnswer year) {
        List<Double> shares = List.of(0.2, 0.22, 0.24, 0.34);
        return table(
                List.of("job", "kind", "promised", "late"),
                shares,
                year.late().stream()
                        .map(l -> List.of(
                                l.job(),
                                l.kind(),
                                l.promised().toString(),
                                Counted.of(l.days(), "day") + (l.done() == null ? ", still here" : "")))
                        .toList());
    }

    private static Piece overrun(YearAnswer year) {
        List<Double> shares = List.of(0.2, 0.22, 0.36, 0.22);
        return table(
                List.of("job", "kind", "quoted, took (min)", "over"),
                shares,
                year.overrun().stream()
                        .map(o ->
                                List.of(o.job(), o.kind(), o.quotedMin() + ", " + o.tookMin(), o.overPercent() + " %"))
                        .toList());
    }

    private static Piece table(List<String> head, List<Double> shares, List<List<String>> rows) {
        if (rows.isEmpty()) {
            return new Words("none", BODY);
        }
        List<Piece> pieces = new ArrayList<>();
        pieces.add(Grid.head(head, shares, BODY));
        rows.stream().limit(MOST).forEach(cells -> pieces.add(Grid.row(cells, shares, BODY)));
        if (rows.size() > MOST) {
            pieces.add(new Words("and " + (rows.size() - MOST) + " more", BODY));
        }
        return new Block(pieces);
    }

    /** Twenty jobs a point, each estimated from those before it. */
    private static Piece honesty(HonestyAnswer estimates) {
        List<Piece> words = new ArrayList<>();
        estimates.remarks().forEach(remark -> words.add(new Words(remark + ".", BODY)));
        if (estimates.over().isEmpty()) {
            return new Block(words);
        }
        Piece plot = new ShareLines(
                estimates.over().stream().map(HonestyAnswer.Stretch::underP50).toList(),
                estimates.over().stream().map(HonestyAnswer.Stretch::underP80).toList(),
                0.5,
                0.8,
                "% P50",
                "% P80",
                years(estimates.over()),
                SHARES_TALL);
        words.addFirst(plot);
        return new Block(words);
    }

    /** Each year once, under its first point. */
    private static List<String> years(List<HonestyAnswer.Stretch> over) {
        List<String> labels = new ArrayList<>();
        int last = 0;
        for (HonestyAnswer.Stretch stretch : over) {
            int year = stretch.to().getYear();
            labels.add(year == last ? "" : String.valueOf(year));
            last = year;
        }
        return labels;
    }
}
