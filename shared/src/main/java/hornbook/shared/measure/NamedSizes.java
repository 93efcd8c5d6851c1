package hornbook.shared.measure;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads sizes that go by a name: number and letter drills, wire and sheet gauges. */
record NamedSizes(DrillTable drills, GaugeTable gauges) {
    private static final String NO = "(?:#|no\\.?|number|nr\\.?)";
    private static final Pattern NUMBER_DRILL =
            Pattern.compile("# ?(\\d{1,3})(?: drill)?|" + NO + " ?(\\d{1,3}) drill|drill " + NO + " ?(\\d{1,3})");
    private static final Pattern LETTER_DRILL =
            Pattern.compile("letter ([a-z])(?: drill)?|([a-z]) drill|drill (?:letter )?([a-z])");
    private static final Pattern VAGUE_DRILL = Pattern.compile("(\\d+) drill|drill (\\d+)");
    private static final Pattern VAGUE_GAUGE =
            Pattern.compile("(?:" + NO + " ?)?(\\d{1,2}|\\d/0) ?(?:ga|gauge|gage|g)\\.?(?: wire| sheet)?");

    /** Reads a text that {@link Writing#plain} has been over; empty if it names neither drill nor gauge. */
    Optional<Reading<NamedSize>> read(String plain) {
        String text = plain.toLowerCase(Locale.ROOT);
        return drill(plain, text).or(() -> gauge(plain, text)).or(() -> vague(plain, text));
    }

    private Optional<Reading<NamedSize>> drill(String plain, String text) {
        Matcher number = NUMBER_DRILL.matcher(text);
        if (number.matches()) {
            String size = "#" + Integer.parseInt(present(number));
            return Optional.of(orNone(
                    drills.named(Drill.Kind.NUMBER, size).map(NamedSize::of),
                    plain,
                    "is no drill: number drills run from #1 to #80"));
        }
        Matcher letter = LETTER_DRILL.matcher(text);
        return letter.matches()
                ? drills.named(Drill.Kind.LETTER, present(letter).toUpperCase(Locale.ROOT))
                        .map(NamedSize::of)
                        .map(Reading::read)
                : Optional.empty();
    }

    private Optional<Reading<NamedSize>> gauge(String plain, String text) {
        for (GaugeSystem system : GaugeSystem.values()) {
            Matcher row = system.numbered().matcher(text);
            if (row.matches()) {
                Optional<NamedSize> size = gauges.named(system, present(row)).map(NamedSize::of);
                return Optional.of(orNone(size, plain, "is not in the " + system.shown() + " gauge, " + run(system)));
            }
        }
        return Optional.empty();
    }

    private String run(GaugeSystem system) {
        WireGauge first = gauges.of(system).findFirst().orElseThrow();
        WireGauge last = gauges.of(system).reduce((_, next) -> next).orElseThrow();
        return "which runs from " + first.text() + " to " + last.text();
    }

    private Optional<Reading<NamedSize>> vague(String plain, String text) {
        Matcher drill = VAGUE_DRILL.matcher(text);
        if (drill.matches()) {
            String size = present(drill);
            return Optional.of(Reading.refused(
                    plain, "can be a number or millimetres: write #%s drill or %s mm drill".formatted(size, size)));
        }
        Matcher gauge = VAGUE_GAUGE.matcher(text);
        if (gauge.matches()) {
            return Optional.of(Reading.refused(plain, "does not say which gauge: " + meanings(present(gauge))));
        }
        return text.matches("(?:stubs'? ?\\d+|\\d+ ?stubs'?)")
                ? Optional.of(Reading.refused(plain, "can be Stubs iron or Stubs steel: write which"))
                : Optional.empty();
    }

    private String meanings(String number) {
        return Arrays.stream(GaugeSystem.values())
                .flatMap(system -> gauges.named(system, number).stream())
                .map(row -> row.text() + " is " + row.size().inMillimetres())
                .collect(Collectors.joining(", "));
    }

    private static Reading<NamedSize> orNone(Optional<NamedSize> size, String plain, String none) {
        return size.map(Reading::read).orElseGet(() -> Reading.refused(plain, none));
    }

    /** The one group that took part in a match. */
    private static String present(Matcher match) {
        for (int group = 1; group <= match.groupCount(); group++) {
            String text = match.group(group);
            if (text != null) {
                return text;
            }
        }
        throw new IllegalStateException("no group in " + match.pattern());
    }
}
