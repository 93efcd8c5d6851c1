package hornbook.shared.exchange;

import hornbook.shared.shop.Count;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Counts and working times as people write them, with a decimal comma or point. */
final class SheetNumbers {
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,3}):(\\d{2})(?::\\d{2})?");
    private static final Pattern HALVES = Pattern.compile("(\\d{1,3}) (1/2|1/4|3/4|½|¼|¾) ?(?:h|hrs?|hours?)?\\.?");
    private static final Pattern MINUTES = Pattern.compile("(\\d{1,5}) ?(?:m|min|mins|minutes)\\.?");
    private static final Pattern HOURS = Pattern.compile("(\\d{1,4}(?:[.,]\\d{1,4})?) ?(?:h|hrs?|hours?)?\\.?");
    private static final Pattern BOTH =
            Pattern.compile("(\\d{1,4}) ?(?:h|hrs?|hours?)\\.? ?(\\d{1,2}) ?(?:m|min|mins|minutes)?\\.?");

    private static final Pattern EXACT =
            Pattern.compile("(-?\\d{1,7})(?:[.,]0{1,2})?(?: ?(?:pcs?|pieces?|stk?|stück)\\.?)?");
    private static final Pattern DOZENS = Pattern.compile("(\\d{1,3}) ?(?:doz|dozen|dz)\\.?");
    private static final Pattern THOUSANDS = Pattern.compile("\\d{1,3}[.,]\\d{3}");

    private static final Map<String, Count> WORDS = words();

    private static final Map<String, Integer> QUARTERS =
            Map.of("1/4", 15, "¼", 15, "1/2", 30, "½", 30, "3/4", 45, "¾", 45);

    private static final int DOZEN = 12;
    private static final int MOST_PIECES = 1_000_000;

    private SheetNumbers() {}

    private static Map<String, Count> words() {
        Map<String, Count> words = new HashMap<>();
        List.of("few", "a few", "wenige", "peu").forEach(word -> words.put(word, Count.Rough.FEW));
        List.of("some", "einige", "quelques").forEach(word -> words.put(word, Count.Rough.SOME));
        List.of("plenty", "many", "lots", "viele", "beaucoup").forEach(word -> words.put(word, Count.Rough.PLENTY));
        List.of("none", "nil", "empty", "keine").forEach(word -> words.put(word, Count.ZERO));
        return words;
    }

    /** A number that is sure, or a rough word: what is only about a number is never made one. */
    static Count count(String cell) {
        String text = cell.toLowerCase(Locale.ROOT);
        Count word = WORDS.get(text);
        Matcher exact = EXACT.matcher(text);
        Matcher dozens = DOZENS.matcher(text);
        if (word != null) {
            return word;
        } else if (exact.matches()) {
            return pieces(cell, Integer.parseInt(exact.group(1)));
        } else if (dozens.matches()) {
            return new Count.Exact(DOZEN * Integer.parseInt(dozens.group(1)));
        }
        throw new CellRefused(
                "count",
                "“" + cell + "” "
                        + (THOUSANDS.matcher(text).matches()
                                ? "may be thousands or a fraction: write the number without a point or comma"
                                : "is not a whole number, or few, some or plenty"));
    }

    private static Count pieces(String cell, int pieces) {
        if (pieces < 0) {
            throw new CellRefused("count", "“" + cell + "” is less than nothing: count again");
        }
        if (pieces > MOST_PIECES) {
            throw new CellRefused("count", "“" + cell + "” is more than any drawer holds: look for a slip");
        }
        return new Count.Exact(pieces);
    }

    /** Minutes from {@code 1.5}, {@code 1,5 h}, {@code 1:30}, {@code 1h 30min} or {@code 90 min}. */
    static int minutes(String cell) {
        String time = cell.toLowerCase(Locale.ROOT);
        Matcher clock = CLOCK.matcher(time);
        Matcher halves = HALVES.matcher(time);
        Matcher both = BOTH.matcher(time);
        Matcher minutes = MINUTES.matcher(time);
        Matcher hours = HOURS.matcher(time);
        if (clock.matches()) {
            return sum(clock);
        } else if (halves.matches()) {
            return 60 * Integer.parseInt(halves.group(1)) + QUARTERS.getOrDefault(halves.group(2), 0);
        } else if (both.matches()) {
            return sum(both);
        } else if (minutes.matches()) {
            return Integer.parseInt(minutes.group(1));
        } else if (hours.matches()) {
            return (int) Math.round(60 * Double.parseDouble(hours.group(1).replace(',', '.')));
        }
        throw new CellRefused("hours", "“" + cell + "” is no time: write hours as 1.5 or 1:30, or 90 min");
    }

    private static int sum(Matcher hoursAndMinutes) {
        return 60 * Integer.parseInt(hoursAndMinutes.group(1)) + Integer.parseInt(hoursAndMinutes.group(2));
    }
}
