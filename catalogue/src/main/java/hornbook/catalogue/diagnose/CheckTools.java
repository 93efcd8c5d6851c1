package hornbook.catalogue.diagnose;

import hornbook.catalogue.diagnose.DiagnoseAnswer.ToolLine;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Cause;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What a check is made with: its words name it, also those of faults that the shop wrote down itself. */
record CheckTools(Catalogue catalogue) {
    /** A word of a check and the tool it means (common practice). */
    private static final Map<String, String> MEANS = Map.ofEntries(
            Map.entry("film", "tool-feeler"),
            Map.entry("feeler between", "tool-feeler-blades"),
            Map.entry("lamp", "tool-leak-light"),
            Map.entry("leak light", "tool-leak-light"),
            Map.entry("leak tester", "tool-leak-tester"),
            Map.entry("gauge on the rim", "tool-tone-hole-gauge"),
            Map.entry("pin gauges", "tool-pin-gauges"),
            Map.entry("pin in the receiver", "tool-small-hole-gauge"),
            Map.entry("micrometer", "tool-micrometer"),
            Map.entry("loupe", "tool-loupe"),
            Map.entry("straightedge", "tool-straightedge"),
            Map.entry("flat plate", "tool-surface-plate"),
            Map.entry("measure the opening", "tool-height-gauge"),
            Map.entry("measure the openings", "tool-height-gauge"),
            Map.entry("measure the lift", "tool-height-gauge"),
            Map.entry("scale at", "tool-spring-scale"),
            Map.entry("tuner", "tool-tuner"));

    /** The tools, in the order in which the words name them; none where hands and eyes do. */
    List<ToolLine> of(Cause cause) {
        String words = (cause.check() + " " + (cause.setUp() == null ? "" : cause.setUp())).toLowerCase(Locale.ROOT);
        return MEANS.entrySet().stream()
                .flatMap(means -> at(words, means.getKey()).map(at -> Map.entry(at, means.getValue())))
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .distinct()
                .flatMap(id -> catalogue.thing(id).stream())
                .map(tool -> new ToolLine(tool.id(), tool.title()))
                .toList();
    }

    private static Stream<Integer> at(String words, String word) {
        return Pattern.compile("\\b" + word + "\\b")
                .matcher(words)
                .results()
                .limit(1)
                .map(found -> found.start());
    }
}
