package hornbook.indexer.fit;

import java.util.Collection;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What the names of the check language mean to a person who has to measure them. */
final class CheckWords {
    private static final Map<String, String> MEANING = Map.ofEntries(
            Map.entry("to", "the size it has to come to"),
            Map.entry("nosestock", "the stock left at the nose"),
            Map.entry("seat", "the diameter of the seat"),
            Map.entry("wall", "the metal left round it"),
            Map.entry("wallmin", "the least metal to be left"),
            Map.entry("bushwall", "the wall of the bush"),
            Map.entry("edge", "the metal left at the edge"),
            Map.entry("left", "how much of the thread's flank is left"),
            Map.entry("len", "the length worked"),
            Map.entry("od", "its outside diameter"),
            Map.entry("hole", "its hole"),
            Map.entry("plain", "whether the zone is plain"),
            Map.entry("cast", "whether it is white cast metal"),
            Map.entry("flat", "whether it is of the flat style"),
            Map.entry("light", "whether it is lighter than the colour wanted"),
            Map.entry("rivet", "whether it is riveted"),
            Map.entry("wire", "its wire"),
            Map.entry("width", "its width"),
            Map.entry("pct", "the hole, for the percent of thread"),
            Map.entry("from", "what it is now"),
            Map.entry("amt", "the change"),
            Map.entry("major", "the thread's major diameter"),
            Map.entry("pitch", "the pitch"),
            Map.entry("dia", "the diameter at the thread"));

    private static final Pattern NAME = Pattern.compile("[a-z]{2,}");

    private CheckWords() {}

    /** A comparison as written, in words. */
    static String in(String comparison) {
        return NAME.matcher(comparison)
                .replaceAll(name -> MEANING.getOrDefault(name.group(), name.group()))
                .replace("<=", "at most")
                .replace(">=", "at least")
                .replace("==", "to be")
                .replace("*", "×");
    }

    static String of(Collection<String> names) {
        return names.stream()
                .map(name -> MEANING.getOrDefault(name, "its " + name))
                .collect(Collectors.joining(", "));
    }
}
