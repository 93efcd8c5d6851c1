package hornbook.viewer.paper.year;

import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.shared.exchange.CsvFile;
import hornbook.shared.shop.BadInput;
import hornbook.shared.year.YearAnswer;
import hornbook.shared.year.YearAnswer.MonthLine;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A year as rows of one table: the part it belongs to, what, which month, how much, of what. */
public final class YearSheet {
    private static final List<String> COLUMNS = List.of("part", "what", "month", "number", "unit");

    private final List<List<String>> rows = new ArrayList<>();

    private YearSheet() {}

    /** @throws BadInput where the file cannot be written */
    public static void write(YearAnswer books, HonestyAnswer estimates, Path file) {
        try {
            CsvFile.write(file, COLUMNS, of(books, estimates));
        } catch (IOException e) {
            throw new BadInput(file + " cannot be written: name a file in a folder that is there and may be written");
        }
    }

    private static List<List<String>> of(YearAnswer books, HonestyAnswer estimates) {
        YearSheet rows = new YearSheet();
        books.months().forEach(rows::month);
        books.kinds().forEach(k -> {
            rows.add("kind of job", k.kind(), "", k.minutes(), "minutes");
            rows.add("kind of job", k.kind(), "", k.done(), "jobs handed back");
        });
        books.tasks().forEach(t -> rows.add("task", t.task(), "", t.minutes(), "minutes"));
        books.used().forEach(u -> {
            rows.add("used", u.item(), "", u.pieces(), "pieces");
            rows.add("used", u.item(), "", u.cost(), "money");
        });
        books.late().forEach(l -> rows.add("late", l.job(), "", l.days(), "days"));
        books.overrun().forEach(o -> {
            rows.add("over the quote", o.job(), "", o.quotedMin(), "minutes quoted");
            rows.add("over the quote", o.job(), "", o.tookMin(), "minutes taken");
        });
        books.suppliers().forEach(s -> {
            rows.add("supplier", s.name(), "", s.typicalDays(), "days as a rule");
            rows.add("supplier", s.name(), "", s.slowest(), "days at worst");
            rows.add("supplier", s.name(), "", s.spent(), "money");
        });
        estimates.over().forEach(s -> {
            rows.add("estimates", s.from() + " to " + s.to(), "", s.underP50(), "share under P50");
            rows.add("estimates", s.from() + " to " + s.to(), "", s.underP80(), "share under P80");
        });
        return rows.rows;
    }

    private void month(MonthLine m) {
        String month = String.valueOf(m.month());
        add("month", "came in", month, m.cameIn(), "jobs");
        add("month", "handed back", month, m.done(), "jobs");
        add("month", "clocked", month, m.minutes(), "minutes");
        add("month", "used", month, m.pieces(), "pieces");
        add("month", "deliveries", month, m.spent(), "money");
    }

    /** What is not known has no row. */
    private void add(String part, String what, String month, @Nullable Number number, String unit) {
        if (number != null) {
            String plain = number instanceof BigDecimal money ? money.toPlainString() : Objects.toString(number);
            rows.add(List.of(part, what, month, plain, unit));
        }
    }
}
