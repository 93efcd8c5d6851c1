package hornbook.shared.thread;

import hornbook.shared.measure.Length;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Reading;
import hornbook.shared.measure.SizeReader;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Turns typed options into a question, or into one line that names the option at fault. */
public final class ThreadQuestionReader {
    /** Standard uncertainty of a pitch whose doubt is not stated. */
    static final Length PITCH_SIGMA = Length.ofMillimetres("0.02");
    /** What a rule laid along the crests may be out in all, so that more turns give a better pitch. */
    private static final long ALONG_CRESTS = 100_000;

    /** The tables end at M8; a half more is a slip, another unit, or no screw of an instrument. */
    private static final Length THICKEST = Length.ofMillimetres("12");

    private final SizeReader sizes;
    private final LengthUnit bare;

    /**
     * @param bare unit of a bare number
     */
    public ThreadQuestionReader(SizeReader sizes, LengthUnit bare) {
        this.sizes = sizes;
        this.bare = bare;
    }

    /** The question, or why there is none. */
    public Reading<ThreadQuestion> read(ThreadWords words) {
        if (words.diameter().isPresent() == words.hole().isPresent()) {
            return new Reading.Refused<>(
                    "", "give --diameter (over a screw) or --hole (through a hole), one of the two");
        }
        Side side = words.hole().isPresent() ? Side.HOLE : Side.SCREW;
        String size = words.hole().or(words::diameter).orElseThrow();
        return option(
                        side == Side.HOLE ? "--hole" : "--diameter",
                        withinTables(above(sizes.measured(size, bare), size), size))
                .then(diameter -> pitch(words).then(pitch -> rest(words, side, diameter, pitch)));
    }

    private Reading<ThreadQuestion> rest(
            ThreadWords words, Side side, Measured diameter, Optional<PitchReading> pitch) {
        return number("--form", words.form(), 20, 90, "degrees")
                .then(form -> number("--percent", words.percent(), 30, 100, "percent")
                        .then(percent -> length("--wall", words.wall())
                                .then(wall -> length("--through", words.through())
                                        .map(through -> new ThreadQuestion(
                                                side,
                                                diameter,
                                                pitch,
                                                form,
                                                percent.orElse(ThreadQuestion.USUAL_PERCENT),
                                                wall,
                                                through)))));
    }

    private Reading<Optional<PitchReading>> pitch(ThreadWords words) {
        long ways = Stream.of(words.pitch(), words.tpi(), words.turns().or(words::over))
                .filter(Optional::isPresent)
                .count();
        if (ways > 1 || words.turns().isPresent() != words.over().isPresent()) {
            return new Reading.Refused<>(
                    "", "give the pitch one way: --pitch, or --tpi, or --turns with --over; or leave it out");
        }
        if (words.tpi().isPresent()) {
            return number("--tpi", words.tpi(), 4, 200, "whole threads to the inch")
                    .then(tpi -> whole("--tpi", words.tpi(), tpi))
                    .map(tpi -> Optional.of(new PitchReading.Leaf(tpi)));
        }
        return words.pitch()
                .map(this::measuredPitch)
                .or(() -> words.turns().map(turns -> turnsOver(words, turns)))
                .orElseGet(() -> Reading.read(Optional.empty()));
    }

    private Reading<Optional<PitchReading>> measuredPitch(String text) {
        return option("--pitch", above(sizes.measured(text, bare), text))
                .map(pitch -> Optional.of(new PitchReading.Measured(pitch.nominal(), sigma(pitch, PITCH_SIGMA))));
    }

    private Reading<Optional<PitchReading>> turnsOver(ThreadWords words, String turns) {
        String over = words.over().orElseThrow();
        return number("--turns", Optional.of(turns), 1, 200, "whole turns")
                .then(count -> whole("--turns", Optional.of(turns), count))
                .then(count -> option("--over", above(sizes.measured(over, bare), over))
                        .map(length -> Optional.of(pitchOf(count, length))));
    }

    private static PitchReading pitchOf(int turns, Measured over) {
        Length unstated = new Length(Math.min(PITCH_SIGMA.nanometres() * turns, ALONG_CRESTS));
        return new PitchReading.Measured(
                new Length(over.nominal().nanometres() / turns),
                new Length(sigma(over, unstated).nanometres() / turns));
    }

    private static Length sigma(Measured measured, Length unstated) {
        return measured.sigma()
                .filter(stated -> stated > 0)
                .map(Length::ofMillimetres)
                .orElse(unstated);
    }

    private static Reading<Measured> above(Reading<Measured> read, String text) {
        return read.then(size -> size.low().nanometres() > 0
                ? Reading.<Measured>read(size)
                : Reading.refused(text, "is nought: a thread has a size"));
    }

    private static Reading<Measured> withinTables(Reading<Measured> read, String text) {
        return read.then(size -> size.nominal().compareTo(THICKEST) <= 0
                ? Reading.<Measured>read(size)
                : Reading.refused(text, "is thicker than any thread in the tables, which end at 8 mm"));
    }

    private Reading<Optional<Length>> length(String name, Optional<String> text) {
        return text.map(typed -> option(name, sizes.length(typed, bare)).map(Optional::of))
                .orElseGet(() -> Reading.read(Optional.empty()));
    }

    private static Reading<Optional<Double>> number(
            String name, Optional<String> text, double least, double most, String what) {
        return text.map(typed -> option(name, decimal(typed, least, most, what)).map(Optional::of))
                .orElseGet(() -> Reading.read(Optional.empty()));
    }

    private static Reading<Double> decimal(String typed, double least, double most, String what) {
        Function<String, Reading<Double>> refused =
                text -> Reading.refused(text, "is not a number of %s from %.0f to %.0f".formatted(what, least, most));
        if (!typed.strip().matches("\\d{1,6}(?:[.,]\\d{1,6})?°?")) {
            return refused.apply(typed);
        }
        double value = new BigDecimal(typed.strip().replace(',', '.').replace("°", "")).doubleValue();
        return value >= least && value <= most ? Reading.read(value) : refused.apply(typed);
    }

    private static Reading<Integer> whole(String name, Optional<String> text, Optional<Double> value) {
        double number = value.orElseThrow();
        return number == Math.rint(number)
                ? Reading.read((int) number)
                : option(name, Reading.refused(text.orElse(""), "is not a whole number"));
    }

    private static <T> Reading<T> option(String name, Reading<T> read) {
        return read instanceof Reading.Refused<T> refused
                ? new Reading.Refused<>(refused.text(), name + ": " + refused.reason())
                : read;
    }
}
