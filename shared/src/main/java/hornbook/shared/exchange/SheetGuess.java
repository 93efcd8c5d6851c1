package hornbook.shared.exchange;

import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;

/** What the cells of a spreadsheet give away about the hand that wrote them. */
final class SheetGuess {
    private static final Pattern COMMA = Pattern.compile("(?<![\\d,])\\d{1,4},\\d{1,4}(?![\\d,])");
    private static final Pattern POINT = Pattern.compile("(?<![\\d.])\\d{0,4}\\.\\d{1,4}(?![\\d.])");
    private static final Pattern ISO = Pattern.compile("\\d{4}-\\d{1,2}-\\d{1,2}.*");
    private static final Pattern POINTS = Pattern.compile("\\d{1,2}\\. ?\\d{1,2}\\. ?\\d{4}");
    private static final Pattern STROKES = Pattern.compile("\\d{1,2}/\\d{1,2}/\\d{4}");

    private final Collection<String> cells;

    SheetGuess(Collection<String> cells) {
        this.cells = List.copyOf(cells);
    }

    static String separator(char sign) {
        return switch (sign) {
            case ';' -> "semicolon";
            case '\t' -> "tab";
            default -> "comma";
        };
    }

    String decimals() {
        boolean comma = cells.stream().anyMatch(cell -> COMMA.matcher(cell).find());
        boolean point = cells.stream()
                .anyMatch(cell -> !day(cell) && POINT.matcher(cell).find());
        return comma && point ? "both" : comma ? "comma" : point ? "point" : "none";
    }

    private static boolean day(String cell) {
        return POINTS.matcher(cell.strip()).matches();
    }

    String dates() {
        boolean strokes = some(STROKES);
        if (strokes) {
            return SheetDates.order(cells);
        }
        return some(POINTS) ? "day first" : some(ISO) ? "year first" : "no days";
    }

    private boolean some(Pattern pattern) {
        return cells.stream().anyMatch(cell -> pattern.matcher(cell.strip()).matches());
    }
}
