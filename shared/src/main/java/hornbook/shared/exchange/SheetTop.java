package hornbook.shared.exchange;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The top of a person's list: which sign parts its cells, and which line holds the headings. Titles above it are passed
 * over; their lines stay, empty, so that those below keep their numbers.
 */
record SheetTop(String text, char separator, long passedOver) {
    private static final Pattern SAID = Pattern.compile("\"?sep=(.)\"?", Pattern.CASE_INSENSITIVE);
    private static final Pattern END = Pattern.compile("\\r\\n|\\r|\\n");

    /** Deeper down no heading is looked for. */
    private static final int DEEP = 12;

    private static final int SURE = 2;

    static SheetTop of(String text) {
        List<String> lines = END.splitAsStream(text).limit(DEEP).toList();
        Matcher said = SAID.matcher(lines.isEmpty() ? "" : lines.getFirst());
        boolean says = said.matches();
        char separator = says ? said.group(1).charAt(0) : separator(lines);
        int from = says ? 1 : 0;
        int headings = headings(lines, from, separator);
        long titles = lines.subList(from, Math.max(from, headings)).stream()
                .filter(line -> filled(line, separator) > 0)
                .count();
        return new SheetTop(without(text, headings), separator, titles);
    }

    /** The sign that is there as often in one line as in the next. */
    private static char separator(List<String> lines) {
        return Stream.of(',', ';', '\t')
                .max(Comparator.comparingLong(c -> alike(lines, c)))
                .orElse(',');
    }

    private static long alike(List<String> lines, char c) {
        List<Long> often = lines.stream()
                .map(line -> line.chars().filter(h -> h == c).count())
                .toList();
        return often.stream()
                .mapToLong(n -> n * often.stream().filter(n::equals).count())
                .max()
                .orElse(0);
    }

    /** The first line whose cells are headings we know; else the first with more than a title in it. */
    private static int headings(List<String> lines, int from, char separator) {
        int first = from;
        while (first < lines.size() - 1 && filled(lines.get(first), separator) == 0) {
            first++;
        }
        if (first >= lines.size() || known(lines.get(first), separator) > 0) {
            return first;
        }
        for (int i = first + 1; i < lines.size(); i++) {
            if (known(lines.get(i), separator) >= SURE) {
                return i;
            }
        }
        int broad = first;
        while (broad < lines.size() - 1 && filled(lines.get(broad), separator) < SURE) {
            broad++;
        }
        return filled(lines.get(broad), separator) < SURE ? first : broad;
    }

    private static long filled(String line, char separator) {
        return cells(line, separator).filter(cell -> !cell.isBlank()).count();
    }

    private static long known(String line, char separator) {
        return cells(line, separator).filter(Headings::known).count();
    }

    private static Stream<String> cells(String line, char separator) {
        return Stream.of(line.split(Pattern.quote(String.valueOf(separator)), -1))
                .map(cell -> cell.strip().replaceAll("^\"|\"$", ""));
    }

    private static String without(String text, int lines) {
        Matcher end = END.matcher(text);
        int at = 0;
        for (int i = 0; i < lines && end.find(); i++) {
            at = end.end();
        }
        return "\n".repeat(lines) + text.substring(at);
    }
}
