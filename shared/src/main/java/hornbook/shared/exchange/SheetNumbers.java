package hornbook.shared.exchange;

import hornbook.shared.shop.Count;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Counts and working times as people write them, with a decimal comma or point. */
final class SheetNumbers {
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,3}):(\\d{2})");
    private static final Pattern MINUTES = Pattern.compile("(\\d{1,5}) ?(?:m|min|mins|minutes)\\.?");
    private static final Pattern HOURS = Pattern.compile("(\\d{1,4}(?:[.,]\\d{1,4})?) ?(?:h|hrs?|hours?)?\\.?");
    private static final Pattern BOTH =
            Pattern.compile("(\\d{1,4}) ?(?:h|hrs?|hours?)\\.? ?(\\d{1,2}) ?(?:m|min|mins|minutes)?\\.?");

    private static final Map<String, Count> WORDS = Map.of(
            "few", Count.Rough.FEW,
            "a few", Count.Rough.FEW,
            "some", Count.Rough.SOME,
            "plenty", Count.Rough.PLENTY,
            "many", Count.Rough.PLENTY,
            "lots", Count.Rough.PLENTY);

    private static final int MOST_PIECES = 1_000_000;

    private SheetNumbers() {}

    static Count count(String cell) {
        Count word = WORDS.get(cell.toLowerCase(Locale.ROOT));
        if (word != null) {
            return word;
        }
        String whole = cell.replaceFirst(" ?(pcs?|pieces?)\\.?$", "").replaceFirst("[.,]0+$", "");
        Optional<Count> exact = Count.read(whole)
                .filter(c -> c instanceof Count.Exact(int pieces) && pieces >= 0 && pieces <= MOST_PIECES);
        return exact.orElseThrow(
                () -> new CellRefused("count", "“" + cell + "” is not a whole number, or few, some or plenty"));
    }

    /** Minutes from {@code 1.5}, {@code 1,5 h}, {@code 1:30}, {@code 1h 30min} or {@code 90 min}. */
    static int minutes(String cell) {
        String time = cell.toLowerCase(Locale.ROOT);
        Matcher clock = CLOCK.matcher(time);
        Matcher both = BOTH.matcher(time);
        Matcher minutes = MINUTES.matcher(time);
        Matcher hours = HOURS.matcher(time);
        if (clock.matches()) {
            return sum(clock);
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
