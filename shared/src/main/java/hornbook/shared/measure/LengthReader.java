package hornbook.shared.measure;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one length, with or without its doubt. */
record LengthReader(NamedSizes named) {
    private static final String FORMS =
            "is no size read here: write 2.5 mm, 2,5, .108\", 108 thou, 7/64\", 1-1/4 in, 25 µm, #40 drill, F drill or"
                    + " 18 AWG";
    private static final int LONGEST = 100;
    private static final Pattern BOTH_UNITS = Pattern.compile("([^()]+?) ?\\(([^()]+)\\)");
    private static final Pattern PLUS_MINUS = Pattern.compile("(.+?) ?(?:±|\\+ ?/ ?-|\\+-) ?(.+)");
    private static final Pattern RANGE = Pattern.compile("(.+?) ?(?:\\.\\.|…| to |–|—) ?(.+)");
    /** Only with a unit: 3-48 is a thread. */
    private static final Pattern DASH_RANGE = Pattern.compile("(.+?) ?- ?([\\d.,].*[a-zA-Z\"].*)");
    /** Two figures for one length, each rounded as we show them, differ by no more. */
    private static final Length SHOWN_ROUNDING = new Length(1_900);

    private record Pair(Length first, Length second) {}

    Reading<Length> single(String text, LengthUnit bare) {
        String plain = Writing.plain(text);
        Optional<Reading<WrittenSize>> one = one(plain);
        if (one.isPresent()) {
            return one.get().map(size -> size.length(bare));
        }
        if (PLUS_MINUS.matcher(plain).matches()) {
            return Reading.refused(plain, "has a doubt beside it, where one size is wanted");
        }
        if (several(plain, bare).flatMap(Reading::found).isPresent()
                || plain.matches(PlainSizes.DECIMAL + ".*\\.\\..*")) {
            return Reading.refused(plain, "is a range, where one size is wanted");
        }
        return written(plain).map(size -> size.length(bare));
    }

    Reading<Measured> measured(String text, LengthUnit bare) {
        String plain = Writing.plain(text);
        return one(plain)
                .map(size -> size.map(found -> Measured.single(found.length(bare))))
                .or(() -> several(plain, bare))
                .orElseGet(() -> written(plain).map(size -> Measured.single(size.length(bare))));
    }

    /** A size with its doubt, or a range; empty if the text has neither form. */
    private Optional<Reading<Measured>> several(String plain, LengthUnit bare) {
        Matcher doubt = PLUS_MINUS.matcher(plain);
        if (doubt.matches()) {
            return Optional.of(pair(plain, doubt, bare).then(two -> plusMinus(plain, two)));
        }
        for (Pattern between : List.of(RANGE, DASH_RANGE)) {
            Matcher range = between.matcher(plain);
            if (range.matches() && number(range.group(1))) {
                return Optional.of(pair(plain, range, bare).then(two -> range(plain, two)));
            }
        }
        return Optional.empty();
    }

    private static Reading<Measured> plusMinus(String plain, Pair pair) {
        return pair.second().compareTo(pair.first()) > 0
                ? Reading.refused(plain, "has a doubt larger than the size")
                : Reading.read(Measured.plusMinus(pair.first(), pair.second()));
    }

    private static Reading<Measured> range(String plain, Pair pair) {
        return pair.first().compareTo(pair.second()) > 0
                ? Reading.refused(plain, "runs downwards: write the smaller size first")
                : Reading.read(Measured.range(pair.first(), pair.second()));
    }

    private static boolean number(String text) {
        return text.matches("[-+.,]?[\\d#].*");
    }

    /** Two sizes of which one may leave its unit to the other; two different units are refused. */
    private Reading<Pair> pair(String plain, Matcher match, LengthUnit bare) {
        return written(match.group(1))
                .then(left -> written(match.group(2)).then(right -> {
                    Optional<LengthUnit> unit = left.unit().or(right::unit);
                    if (right.unit().isPresent()
                            && left.unit().isPresent()
                            && !left.unit().equals(right.unit())) {
                        return Reading.refused(plain, "mixes two units");
                    }
                    LengthUnit shared = unit.orElse(bare);
                    return Reading.read(new Pair(left.length(shared), right.length(shared)));
                }));
    }

    private Reading<WrittenSize> written(String text) {
        String plain = text.strip();
        if (plain.isEmpty()) {
            return new Reading.Refused<>(text, "no size is written: write one such as 2.5 mm or .108\"");
        }
        if (plain.length() > LONGEST) {
            return Reading.refused(plain, "is too long to be a size");
        }
        return one(plain).orElseGet(() -> refuse(plain));
    }

    /** A text that has the form of one size, whether or not it can be one; empty for any other. */
    private Optional<Reading<WrittenSize>> one(String plain) {
        if (plain.isEmpty() || plain.length() > LONGEST) {
            return Optional.empty();
        }
        // "3 drill" could be number or millimetres: names come first, but they cost more to look for.
        Optional<Reading<WrittenSize>> number = plain.endsWith("drill") ? Optional.empty() : PlainSizes.read(plain);
        if (number.flatMap(Reading::found).isPresent()) {
            return number;
        }
        return named.read(plain)
                .map(size -> size.map(found -> WrittenSize.exactly(found.length())))
                .or(() -> PlainSizes.read(plain))
                .or(() -> bothUnits(plain));
    }

    /** Our own way of showing a length, {@code 2.743 mm (.108 in)}, read back; the first figure counts. */
    private Optional<Reading<WrittenSize>> bothUnits(String plain) {
        Matcher both = BOTH_UNITS.matcher(plain);
        if (!both.matches()) {
            return Optional.empty();
        }
        return Optional.of(written(both.group(1))
                .then(first -> written(both.group(2)).then(second -> {
                    Length apart = first.length(LengthUnit.MILLIMETRE)
                            .minus(second.length(LengthUnit.MILLIMETRE))
                            .abs();
                    return apart.compareTo(SHOWN_ROUNDING) <= 0
                            ? Reading.<WrittenSize>read(first)
                            : Reading.refused(plain, "gives two sizes that do not agree");
                })));
    }

    private static Reading<WrittenSize> refuse(String plain) {
        if (plain.startsWith("-") && PlainSizes.read(plain.substring(1).strip()).isPresent()) {
            return Reading.refused(plain, "is below nought: a size is not");
        }
        if (plain.matches(".*\\d ?(?:mm|in|\"|thou|cm)\\.? ?[\\d.,].*")) {
            return Reading.refused(plain, "holds more than one size");
        }
        return Reading.refused(plain, FORMS);
    }
}
