package hornbook.shared.exchange;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds threads and sizes that a spreadsheet program took for days: {@code 3-48} comes back as {@code Mar-48},
 * {@code 1948-03-01} or {@code 17593}, {@code 1/16} as {@code 01/16/26}. No thread and no size is written like these, so
 * the cell is not taken, and what most likely stood there is offered.
 */
final class BentSize {
    private static final Pattern MONTH_YEAR = Pattern.compile("(\\p{L}{3,5})\\.?[- /](\\d{2}|\\d{4})");
    private static final Pattern DAY_MONTH = Pattern.compile("(\\d{1,2})\\.?[- /](\\p{L}{3,5})\\.?(?:[- /]\\d{2,4})?");
    private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})(?:[T ].*)?");
    private static final Pattern THREE = Pattern.compile("(\\d{1,2})[./](\\d{1,2})[./](\\d{2}|\\d{4})\\.?");
    private static final Pattern NUMBER = Pattern.compile("\\d{5}");

    /** Day 0 of the spreadsheet programs' count of days. */
    static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

    private static final Set<Integer> DENOMINATORS = Set.of(2, 4, 8, 16, 32, 64);
    private static final int FEWEST_TURNS = 18;
    private static final int CENTURY = 100;

    private BentSize() {}

    /** What to say of a cell that holds a thread, where it was bent. */
    static Optional<String> thread(String cell) {
        return day(cell).map(day -> said(cell, day.threads()));
    }

    /** What to say of a cell that holds a size, where it was bent. */
    static Optional<String> size(String cell) {
        return day(cell).map(day -> said(cell, day.fractions()));
    }

    private static String said(String cell, Set<String> offers) {
        String meant = offers.isEmpty() ? "a size" : String.join(" or ", offers);
        return "“" + cell + "” was made a day of by a spreadsheet program: it was most likely " + meant
                + "; write that, and set the column to text";
    }

    /** A day as read, with 0 for what does not stand in the cell. */
    private record Day(int first, int second, int year, boolean sure) {
        Set<String> threads() {
            Set<String> offers = new LinkedHashSet<>();
            if (second <= 1 && year > 0) {
                thread(offers, first, year % CENTURY);
            }
            thread(offers, first, second);
            if (!sure) {
                // Day first, as most of the world writes it.
                thread(offers, second, first == 1 ? year % CENTURY : first);
            }
            return offers;
        }

        private static void thread(Set<String> offers, int size, int turns) {
            if (turns >= FEWEST_TURNS && size <= 12) {
                offers.add(size + "-" + turns);
            }
        }

        Set<String> fractions() {
            Set<String> offers = new LinkedHashSet<>();
            if (second <= 1 && year > 0) {
                fraction(offers, first, year % CENTURY);
            }
            fraction(offers, first, second);
            fraction(
                    offers,
                    second,
                    !sure && first == 1 && DENOMINATORS.contains(year % CENTURY) ? year % CENTURY : first);
            return offers;
        }

        private static void fraction(Set<String> offers, int over, int under) {
            if (DENOMINATORS.contains(under) && over < under && over % 2 == 1) {
                offers.add(over + "/" + under);
            }
        }
    }

    private static Optional<Day> day(String written) {
        String cell = written.strip();
        Matcher monthYear = MONTH_YEAR.matcher(cell);
        Matcher dayMonth = DAY_MONTH.matcher(cell);
        Matcher iso = ISO.matcher(cell);
        Matcher three = THREE.matcher(cell);
        if (monthYear.matches()) {
            return Months.shortened(monthYear.group(1)).map(m -> new Day(m, 0, number(monthYear, 2), true));
        } else if (dayMonth.matches()) {
            return Months.shortened(dayMonth.group(2)).map(m -> new Day(m, number(dayMonth, 1), 0, true));
        } else if (iso.matches()) {
            return Optional.of(new Day(number(iso, 2), number(iso, 3), number(iso, 1), true));
        } else if (three.matches()) {
            return Optional.of(new Day(number(three, 1), number(three, 2), number(three, 3), false));
        }
        return NUMBER.matcher(cell).matches() ? counted(Integer.parseInt(cell)) : Optional.empty();
    }

    private static Optional<Day> counted(int days) {
        LocalDate day = DAY_ZERO.plusDays(days);
        return Optional.of(new Day(day.getMonthValue(), day.getDayOfMonth(), day.getYear(), true));
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }
}
