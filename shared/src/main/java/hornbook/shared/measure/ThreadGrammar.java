package hornbook.shared.measure;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The writings of a thread's designation. */
final class ThreadGrammar {
    private static final String NUMBER = "(\\d{1,3}(?:\\.\\d{1,4})?|\\.\\d{1,4})";
    private static final String SIZE = "(?:#|no\\.? ?|nr\\.? ?|number )?(\\d{1,2}(?:/\\d{1,3})?)(?:\"| ?in\\.?)?";
    static final String SERIES =
            "unc|unf|unef|uns|un|nc|nf|nef|ns|old[- ]?asme|asme(?: 1907)?|bsw|whitworth|whit\\.?|bsf|me|model engineer";
    private static final Pattern METRIC =
            Pattern.compile("m ?" + NUMBER + "(?: ?[x*/-] ?" + NUMBER + ")?(?: ?mm)?(?: (coarse|fine))?");
    private static final Pattern BY =
            Pattern.compile(NUMBER + "(?: ?mm)? ?[x*] ?" + NUMBER + "(?: ?mm)?(?: (?:old )?metric)?");
    private static final Pattern INCH =
            Pattern.compile(SIZE + " ?[-/x* ] ?(\\d{2,3})(?: ?(?:tpi|t\\.p\\.i\\.))?(?:[ -]?(" + SERIES + "))?");
    private static final Pattern INCH_SERIES = Pattern.compile(SIZE + " ?(" + SERIES + ")");
    private static final Pattern SERIES_FIRST = Pattern.compile("(w|bsw|bsf|unc|unf|unef) ?(\\d.*)");
    private static final Pattern BA_NUMBER =
            Pattern.compile("(?:#|no\\.? ?)?(\\d{1,2}) ?b\\.? ?a\\.?|b\\.?a\\.? ?(?:#|no\\.? ?)?(\\d{1,2})");
    private static final Pattern OLD_GERMAN =
            Pattern.compile("(?:s|loewenherz|lowenherz|löwenherz) ?" + NUMBER + "(?: ?[x*] ?" + NUMBER + ")?");
    private static final Set<ThreadSystem> INCH_SYSTEMS = EnumSet.of(
            ThreadSystem.UNIFIED, ThreadSystem.WHITWORTH, ThreadSystem.BRITISH_FINE, ThreadSystem.MODEL_ENGINEER);
    private static final BigDecimal FEWEST_PER_INCH = BigDecimal.valueOf(16);

    private ThreadGrammar() {}

    /** What a text says, once {@link Writing#plain} has been over it; empty if it is no designation. */
    static Optional<ThreadWriting> parse(String plain) {
        String text = plain.toLowerCase(Locale.ROOT)
                .replaceAll("(?<=\\d),(?=\\d)", ".")
                .replaceAll(" (?:thread|screw|tap|die|tap and die)s?$", "")
                .strip();
        return metric(text)
                .or(() -> by(text))
                .or(() -> ba(text))
                .or(() -> oldGerman(text))
                .or(() -> inch(text));
    }

    private static Optional<ThreadWriting> metric(String text) {
        Matcher match = METRIC.matcher(text);
        return match.matches()
                ? sized(ThreadSystem.ISO_METRIC, match.group(1), match.group(2), Optional.ofNullable(match.group(3)))
                : Optional.empty();
    }

    /** {@code 2.6x0.45}; but {@code 3x48} counts threads. */
    private static Optional<ThreadWriting> by(String text) {
        Matcher match = BY.matcher(text);
        return match.matches() && new BigDecimal(match.group(2)).compareTo(FEWEST_PER_INCH) < 0
                ? sized(ThreadSystem.ISO_METRIC, match.group(1), match.group(2), Optional.empty())
                : Optional.empty();
    }

    private static Optional<ThreadWriting> oldGerman(String text) {
        Matcher match = OLD_GERMAN.matcher(text);
        return match.matches()
                ? sized(ThreadSystem.LOEWENHERZ, match.group(1), match.group(2), Optional.empty())
                : Optional.empty();
    }

    private static Optional<ThreadWriting> sized(
            ThreadSystem system, String major, @Nullable String pitch, Optional<String> series) {
        Optional<Pitch> stated = Optional.ofNullable(pitch)
                .filter(p -> new BigDecimal(p).signum() > 0)
                .map(Pitch::ofMillimetres);
        return pitch != null && stated.isEmpty()
                ? Optional.empty()
                : Optional.of(new ThreadWriting(EnumSet.of(system), Length.ofMillimetres(major), stated, series, ""));
    }

    /** 6 × 0.9^(1.2 n) mm to two figures (BS 93), so that a number not in the standard still has a size. */
    private static Optional<ThreadWriting> ba(String text) {
        Matcher match = BA_NUMBER.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        String number = match.group(1) == null ? match.group(2) : match.group(1);
        double major = 6 * Math.pow(0.9, 1.2 * Integer.parseInt(number));
        BigDecimal rounded = BigDecimal.valueOf(major).round(new java.math.MathContext(2));
        return sized(ThreadSystem.BA, rounded.toPlainString(), null, Optional.empty());
    }

    private static Optional<ThreadWriting> inch(String text) {
        Matcher first = SERIES_FIRST.matcher(text);
        String turned = first.matches() ? first.group(2) + " " + first.group(1).replaceFirst("^w$", "bsw") : text;
        Matcher both = INCH.matcher(turned);
        if (both.matches()) {
            int perInch = Integer.parseInt(both.group(2));
            Optional<Pitch> pitch = perInch == 0 ? Optional.empty() : Optional.of(Pitch.perInch(perInch));
            return pitch.isEmpty() ? Optional.empty() : inch(both.group(1), pitch, both.group(3));
        }
        Matcher series = INCH_SERIES.matcher(turned);
        return series.matches() ? inch(series.group(1), Optional.empty(), series.group(2)) : Optional.empty();
    }

    private static Optional<ThreadWriting> inch(String size, Optional<Pitch> pitch, @Nullable String series) {
        String word = series == null ? "" : series;
        return InchSize.major(size)
                .map(major -> new ThreadWriting(systems(word), major, pitch, series(word), size + "-"));
    }

    private static Set<ThreadSystem> systems(String word) {
        return switch (word.isEmpty() ? ' ' : word.charAt(0)) {
            case ' ' -> INCH_SYSTEMS;
            case 'w' -> EnumSet.of(ThreadSystem.WHITWORTH);
            case 'b' -> EnumSet.of(word.equals("bsf") ? ThreadSystem.BRITISH_FINE : ThreadSystem.WHITWORTH);
            case 'm' -> EnumSet.of(ThreadSystem.MODEL_ENGINEER);
            default -> EnumSet.of(ThreadSystem.UNIFIED);
        };
    }

    /** The national series of before 1949 (NC, NF) are the unified ones under an older name. */
    private static Optional<String> series(String word) {
        return switch (word) {
            case "unc", "nc" -> Optional.of("UNC");
            case "unf", "nf" -> Optional.of("UNF");
            case "unef", "nef" -> Optional.of("UNEF");
            case "uns", "ns" -> Optional.of("UNS");
            default -> word.contains("asme") ? Optional.of("old-ASME") : Optional.empty();
        };
    }
}
