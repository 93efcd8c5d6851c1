package hornbook.indexer.fit;

import hornbook.shared.measure.Length;
import hornbook.shared.measure.Pitch;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.measure.Thread;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sizes of threads by what they are called; also of one that no standard has, {@code special 10x0.5}. */
final class Threads {
    private static final Pattern SPECIAL = Pattern.compile("special (\\d+(?:\\.\\d+)?) ?x ?(\\d+(?:\\.\\d+)?)");
    /** Depth of a full 60 degree thread in pitches (ISO 68-1). */
    private static final double DEPTH = 1.299038;

    private final SizeReader reader;
    private final Map<String, Optional<Form>> known = new HashMap<>();

    Threads(SizeReader reader) {
        this.reader = reader;
    }

    /**
     * @param major mm
     * @param pitch mm
     * @param depth of the full thread, both sides, in pitches
     */
    record Form(String designation, double major, double pitch, double depth) {
        /** Percent of full thread in a hole of that diameter, mm. */
        double percent(double hole) {
            return 100 * (major - hole) / (depth * pitch);
        }
    }

    Optional<Form> form(String text) {
        return known.computeIfAbsent(text, this::read);
    }

    private Optional<Form> read(String text) {
        Matcher special = SPECIAL.matcher(text);
        if (special.matches()) {
            return Optional.of(new Form(
                    text,
                    Length.ofMillimetres(special.group(1)).mm(),
                    Pitch.ofMillimetres(special.group(2)).mm(),
                    DEPTH));
        }
        return reader.thread(text).found().map(Threads::form);
    }

    private static Form form(Thread thread) {
        return new Form(
                thread.designation(),
                thread.major().mm(),
                thread.pitch().mm(),
                thread.system().fullDepth());
    }
}
