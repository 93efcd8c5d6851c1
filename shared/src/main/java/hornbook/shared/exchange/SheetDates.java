package hornbook.shared.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The days of one column. With points the day comes first; with strokes it is the month or the day, which is only
 * believed where another day of the column leaves no choice.
 */
final class SheetDates {
    private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?:[T ].*)?");
    private static final Pattern POINTS = Pattern.compile("(\\d{1,2})\\. ?(\\d{1,2})\\. ?(\\d{4}|\\d{2})");
    private static final Pattern STROKES = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4}|\\d{2})(?: .*)?");
    private static final Pattern DAY_NAMED =
            Pattern.compile("(\\d{1,2})\\.?[ -](\\p{L}{3,12})\\.?,?[ -](\\d{4}|\\d{2})");
    private static final Pattern MONTH_NAMED = Pattern.compile("(\\p{L}{3,12})\\.? (\\d{1,2}),? (\\d{4})");
    private static final Pattern COUNTED = Pattern.compile("[34]\\d{4}");

    /** Two digits below this are years of this century. */
    private static final int CENTURY_TURNS = 70;

    private enum Order {
        DAY_FIRST,
        MONTH_FIRST
    }

    private final String field;
    private final @Nullable Order settled;
    private final List<String> remarks;

    /** @param cells what stands in the column, from which the order of day and month is told */
    SheetDates(String field, Collection<String> cells, List<String> remarks) {
        this.field = field;
        this.remarks = remarks;
        boolean day = cells.stream().anyMatch(cell -> only(cell, Order.DAY_FIRST));
        boolean month = cells.stream().anyMatch(cell -> only(cell, Order.MONTH_FIRST));
        this.settled = day == month ? null : day ? Order.DAY_FIRST : Order.MONTH_FIRST;
    }

    /** In words, how days with strokes would be read in these cells. */
    static String order(Collection<String> cells) {
        Order settled = new SheetDates("", cells, List.of()).settled;
        return settled == null
                ? "with strokes, day or month first: not to be told"
                : settled == Order.DAY_FIRST ? "day first" : "month first";
    }

    private static boolean only(String cell, Order order) {
        Matcher m = STROKES.matcher(cell.strip());
        if (!m.matches()) {
            return false;
        }
        Order other = order == Order.DAY_FIRST ? Order.MONTH_FIRST : Order.DAY_FIRST;
        return strokes(m, order).isPresent() && strokes(m, other).isEmpty();
    }

    private static Optional<LocalDate> strokes(Matcher m, Order order) {
        boolean day = order == Order.DAY_FIRST;
        return day(m.group(3), m.group(day ? 2 : 1), m.group(day ? 1 : 2));
    }

    /** The day, or nothing where the cell is empty. */
    @Nullable
    LocalDate read(String cell) {
        if (cell.isEmpty()) {
            return null;
        }
        return plain(cell)
                .or(() -> named(cell))
                .or(() -> counted(cell))
                .orElseThrow(() ->
                        new CellRefused(field, "“" + cell + "” is no day: write it as 2026-09-30, the year in full"));
    }

    private Optional<LocalDate> plain(String cell) {
        Matcher iso = ISO.matcher(cell);
        Matcher points = POINTS.matcher(cell);
        Matcher strokes = STROKES.matcher(cell);
        if (iso.matches()) {
            return day(iso.group(1), iso.group(2), iso.group(3));
        } else if (points.matches()) {
            return day(points.group(3), points.group(2), points.group(1));
        }
        return strokes.matches() ? strokes(cell, strokes) : Optional.empty();
    }

    private static Optional<LocalDate> named(String cell) {
        Matcher day = DAY_NAMED.matcher(cell);
        Matcher month = MONTH_NAMED.matcher(cell);
        if (day.matches()) {
            return Months.named(day.group(2)).flatMap(m -> day(day.group(3), String.valueOf(m), day.group(1)));
        }
        return month.matches()
                ? Months.named(month.group(1)).flatMap(m -> day(month.group(3), String.valueOf(m), month.group(2)))
                : Optional.empty();
    }

    /** Spreadsheet programs write a day whose column lost its form as the days since 1899. */
    private Optional<LocalDate> counted(String cell) {
        if (!COUNTED.matcher(cell).matches()) {
            return Optional.empty();
        }
        LocalDate day = BentSize.DAY_ZERO.plusDays(Long.parseLong(cell));
        remarks.add("days written as numbers were read as a spreadsheet program counts them: " + cell + " as " + day);
        return Optional.of(day);
    }

    private Optional<LocalDate> strokes(String cell, Matcher m) {
        Optional<LocalDate> dayFirst = strokes(m, Order.DAY_FIRST);
        Optional<LocalDate> monthFirst = strokes(m, Order.MONTH_FIRST);
        if (dayFirst.isEmpty() || monthFirst.isEmpty() || dayFirst.equals(monthFirst)) {
            return dayFirst.or(() -> monthFirst);
        }
        if (settled == null) {
            throw new CellRefused(
                    field,
                    "“" + cell + "” may be " + dayFirst.get() + " or " + monthFirst.get()
                            + ": write it as one of these");
        }
        return settled == Order.DAY_FIRST ? dayFirst : monthFirst;
    }

    private static Optional<LocalDate> day(String year, String month, String day) {
        try {
            return Optional.of(LocalDate.of(inFull(year), Integer.parseInt(month), Integer.parseInt(day)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static int inFull(String year) {
        int number = Integer.parseInt(year);
        return year.length() > 2 ? number : number + (number < CENTURY_TURNS ? 2000 : 1900);
    }
}
