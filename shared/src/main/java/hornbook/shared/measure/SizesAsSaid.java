package hornbook.shared.measure;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Brings sizes as they are said at the bench, {@code length 12; diameter 2,74 mm}, to the form of the books. */
record SizesAsSaid(DimensionsReader reader) {
    private static final Pattern SAID = Pattern.compile("(\\p{Alpha}[\\p{Alnum}-]*)(\\s*[=:]\\s*|\\s+)(\\S.*)");
    private static final String HOW =
            "is no size we read: write length 12 mm; diameter 2.74 mm, with the name before each and ; between";

    Reading<String> written(String text) {
        if (text.isBlank() || reader.all(text).found().isPresent()) {
            return Reading.read(text.strip());
        }
        List<String> pieces = Arrays.stream(text.split(";"))
                .map(String::strip)
                .filter(piece -> !piece.isEmpty())
                .toList();
        Optional<String> bare = pieces.size() == 1 ? size(pieces.getFirst()) : Optional.empty();
        if (bare.isPresent()) {
            return Reading.read("size=" + bare.get());
        }
        for (String piece : pieces) {
            if (said(piece).isEmpty()) {
                return Reading.refused(piece, HOW);
            }
        }
        String all = pieces.stream().flatMap(piece -> said(piece).stream()).collect(Collectors.joining(";"));
        return reader.all(all).map(read -> all);
    }

    private Optional<String> said(String piece) {
        Matcher said = SAID.matcher(piece);
        if (!said.matches()) {
            return Optional.empty();
        }
        boolean signed = !said.group(2).isBlank();
        return (signed ? value(said.group(3)) : size(said.group(3))).map(value -> said.group(1) + "=" + value);
    }

    /** A size, or after a sign a word, as nose=headed-tapered. */
    private Optional<String> value(String text) {
        return size(text).or(() -> reader.value(text).found().map(word -> text.strip()));
    }

    /** A bare number is taken in the shop's unit, which is then written with it. */
    private Optional<String> size(String text) {
        String plain = Writing.plain(text);
        Optional<BigDecimal> number = PlainSizes.number(plain);
        if (number.isPresent()) {
            return number.filter(n -> n.signum() > 0).map(n -> n.toPlainString() + " mm");
        }
        return reader.lengths().measured(plain, LengthUnit.MILLIMETRE).found().map(read -> text.strip());
    }
}
