package hornbook.catalogue.identify;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** One look at a horn and what it showed. */
public sealed interface Seen {
    /** Id of the trait. */
    String trait();

    /** The look as a person writes it, {@code trait=value}. */
    default String written() {
        return trait() + "=" + value();
    }

    /** What it showed, as written. */
    String value();

    /** One of these values, the looker cannot say which; a list of one is a plain answer. */
    record OneOf(String trait, List<String> values) implements Seen {
        /** Keeps its own copy. */
        public OneOf {
            values = List.copyOf(values);
        }

        @Override
        public String value() {
            return String.join("|", values);
        }
    }

    /** Values of a `many` trait, each there or not; what is not named was not looked at. */
    record Parts(String trait, Map<String, Boolean> there) implements Seen {
        /** Keeps its own copy, in order. */
        public Parts {
            there = Collections.unmodifiableMap(new LinkedHashMap<>(there));
        }

        @Override
        public String value() {
            return there.entrySet().stream()
                    .map(e -> (e.getValue() ? "" : "no:") + e.getKey())
                    .collect(Collectors.joining("|"));
        }
    }

    /**
     * A measurement.
     *
     * @param mm what was read, the gauge's known error already taken off
     * @param spread standard deviation of the gauge, mm; 0 for the usual one of the trait
     */
    record Measured(String trait, double mm, double spread) implements Seen {
        @Override
        public String value() {
            return mm + " mm" + (spread > 0 ? "±" + spread : "");
        }
    }

    /** The trait does not apply to this horn. */
    record Absent(String trait) implements Seen {
        /** The word for it. */
        public static final String WORD = "absent";

        @Override
        public String value() {
            return WORD;
        }
    }

    /** Looked, and could not tell: it changes nothing, but is not asked again. */
    record CannotTell(String trait) implements Seen {
        /** The word for it. */
        public static final String WORD = "unknown";

        @Override
        public String value() {
            return WORD;
        }
    }
}
