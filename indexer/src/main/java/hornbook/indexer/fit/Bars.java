package hornbook.indexer.fit;

import java.util.List;
import java.util.regex.Pattern;

/** Alternatives written with a bar between. */
final class Bars {
    private static final Pattern BAR = Pattern.compile("\\|");

    private Bars() {}

    static List<String> apart(String text) {
        return BAR.splitAsStream(text)
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
