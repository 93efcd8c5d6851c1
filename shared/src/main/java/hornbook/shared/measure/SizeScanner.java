package hornbook.shared.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the sizes in a free text. A writing counts only if the reader understands it. A bare whole number is no size; a
 * bare decimal is millimetres, or inches where it is written {@code .108}.
 */
final class SizeScanner {
    private record Kind(List<Pattern> patterns, Function<String, Optional<Size>> read) {}

    private final Map<SizeStart, List<Kind>> kinds;

    SizeScanner(LengthReader lengths, NamedSizes named, ThreadReader threads) {
        Function<String, Optional<Size>> name = text -> named.read(Writing.plain(text))
                .flatMap(Reading::found)
                .map(found -> new Size.Plain(Measured.single(found.length())));
        Function<String, Optional<Size>> thread =
                text -> threads.meanings(text).found().map(Size.OfThread::new);
        this.kinds = Map.of(
                SizeStart.WORD,
                List.of(new Kind(SizePatterns.WORDY_NAMES, name), new Kind(SizePatterns.WORDY_THREADS, thread)),
                SizeStart.HASH,
                List.of(new Kind(SizePatterns.HASH_THREADS, thread), new Kind(SizePatterns.HASH_NAMES, name)),
                SizeStart.DIGIT,
                List.of(
                        new Kind(SizePatterns.NAMES, name),
                        new Kind(SizePatterns.THREADS, thread),
                        new Kind(SizePatterns.LENGTHS, text -> length(lengths, text, LengthUnit.MILLIMETRE)),
                        new Kind(SizePatterns.BARE_INCHES, text -> length(lengths, text, LengthUnit.INCH))),
                SizeStart.NONE,
                List.of());
    }

    List<SizeMention> scan(String text) {
        List<SizeMention> found = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            SizeStart start = SizeStart.at(text, at);
            Optional<SizeMention> mention = start == SizeStart.NONE ? Optional.empty() : mention(text, at, start);
            mention.ifPresent(found::add);
            at = mention.map(SizeMention::end).orElse(at + 1);
        }
        return List.copyOf(found);
    }

    private Optional<SizeMention> mention(String text, int at, SizeStart start) {
        Optional<SizeMention> usual = start == SizeStart.DIGIT ? PlainMillimetres.at(text, at) : Optional.empty();
        return usual.or(() -> written(text, at, kinds.getOrDefault(start, List.of())));
    }

    private static Optional<SizeMention> written(String text, int at, List<Kind> kinds) {
        for (Kind kind : kinds) {
            for (Pattern pattern : kind.patterns()) {
                Matcher match = pattern.matcher(text)
                        .region(at, text.length())
                        .useTransparentBounds(true)
                        .useAnchoringBounds(false);
                Optional<Size> size = match.lookingAt() && SizeStart.endsAt(text, match.end())
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
}
