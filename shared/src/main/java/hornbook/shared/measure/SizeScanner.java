package hornbook.shared.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the sizes in a free text. A writing counts only if the reader understands it. A bare whole number is no size; a
 * bare decimal is millimetres, or inches where it is written {@code .108}.
 */
final class SizeScanner {
    /** What may not follow a size: it would be part of a word, a serial or a longer number. */
    private static final Pattern END = Pattern.compile("(?![\\p{L}\\p{N}♭♯]|[-/.,×x]\\d)");

    private static final String JOINED = "-/.,#×♭♯_";

    private record Kind(List<Pattern> patterns, Function<String, Optional<Size>> read) {}

    private final List<Kind> kinds;

    SizeScanner(LengthReader lengths, NamedSizes named, ThreadReader threads) {
        Function<String, Optional<Size>> name = text -> named.read(Writing.plain(text))
                .flatMap(Reading::found)
                .map(found -> new Size.Plain(Measured.single(found.length())));
        kinds = List.of(
                new Kind(SizePatterns.NAMED, name),
                new Kind(
                        SizePatterns.THREADS,
                        text -> threads.meanings(text).found().map(Size.OfThread::new)),
                new Kind(SizePatterns.LENGTHS, text -> length(lengths, text, LengthUnit.MILLIMETRE)),
                new Kind(SizePatterns.BARE_INCHES, text -> length(lengths, text, LengthUnit.INCH)),
                new Kind(SizePatterns.BARE_DRILLS, name));
    }

    List<SizeMention> scan(String text) {
        List<SizeMention> found = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            Optional<SizeMention> mention = begins(text, at) ? mention(text, at) : Optional.empty();
            mention.ifPresent(found::add);
            at = mention.map(SizeMention::end).orElse(at + 1);
        }
        return List.copyOf(found);
    }

    private Optional<SizeMention> mention(String text, int at) {
        for (Kind kind : kinds) {
            for (Pattern pattern : kind.patterns()) {
                Matcher match = pattern.matcher(text)
                        .region(at, text.length())
                        .useTransparentBounds(true)
                        .useAnchoringBounds(false);
                Optional<Size> size = match.lookingAt() && ends(text, match.end())
                        ? kind.read().apply(match.group())
                        : Optional.empty();
                if (size.isPresent()) {
                    return Optional.of(new SizeMention(at, match.end(), match.group(), size.get()));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Size> length(LengthReader lengths, String text, LengthUnit bare) {
        return lengths.measured(text, bare).found().map(Size.Plain::new);
    }

    private static boolean begins(String text, int at) {
        if (text.charAt(at) == ' ') {
            return false;
        }
        char before = at == 0 ? ' ' : text.charAt(at - 1);
        return !Character.isLetterOrDigit(before) && JOINED.indexOf(before) < 0;
    }

    private static boolean ends(String text, int end) {
        return END.matcher(text).region(end, text.length()).lookingAt();
    }
}
