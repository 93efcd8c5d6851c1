package hornbook.shared.gauge;

import hornbook.shared.measure.Drill;
import hornbook.shared.measure.GaugeSystem;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.StandardSizes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** Every series a size can be named in: drills, gauges, 64ths of an inch and common metric stock. */
final class Scales {
    private static final long SIXTY_FOURTH = LengthUnit.INCH.nanometres() / 64;
    private static final long TENTH = 100_000;
    private static final Optional<String> STOCK = Optional.of("common stock, from memory");

    private final List<Scale> fixed;

    Scales(StandardSizes tables) {
        Stream<Scale> drills = Arrays.stream(Drill.Kind.values())
                .filter(kind -> kind != Drill.Kind.FRACTION)
                .map(kind -> new Scale(
                        name(kind),
                        tables.drills().drills().stream()
                                .filter(drill -> drill.kind() == kind)
                                .map(Mark::of)
                                .toList()));
        Stream<Scale> gauges = Arrays.stream(GaugeSystem.values())
                .map(system -> new Scale(
                        system.shown(), tables.gauges().of(system).map(Mark::of).toList()));
        this.fixed = Stream.concat(drills, gauges).toList();
    }

    /** All of them; fractions and stock only as far as they are wanted. */
    List<Scale> reaching(Length low, Length high) {
        List<Scale> all = new ArrayList<>();
        all.add(new Scale("64ths of an inch", fractions(low, high)));
        all.addAll(fixed);
        all.add(new Scale("metric rod and tube", stock(low, high)));
        return all;
    }

    private static String name(Drill.Kind kind) {
        return switch (kind) {
            case NUMBER -> "number drills";
            case LETTER -> "letter drills";
            case FRACTION -> "fraction drills";
            case METRIC -> "metric drills";
        };
    }

    private static List<Mark> fractions(Length low, Length high) {
        return LongStream.rangeClosed(low.nanometres() / SIXTY_FOURTH - 1, high.nanometres() / SIXTY_FOURTH + 2)
                .filter(count -> count > 0)
                .mapToObj(count -> Mark.computed(fraction(count), new Length(count * SIXTY_FOURTH)))
                .toList();
    }

    private static String fraction(long sixtyFourths) {
        long whole = sixtyFourths / 64;
        long rest = sixtyFourths % 64;
        if (rest == 0) {
            return whole + "\"";
        }
        long shared = Long.lowestOneBit(rest);
        return (whole > 0 ? whole + "-" : "") + rest / shared + "/" + 64 / shared + "\"";
    }

    /** By 0.1 mm to 3 mm, by 0.5 mm to 20 mm, then by whole millimetres. */
    private static List<Mark> stock(Length low, Length high) {
        return LongStream.rangeClosed(low.nanometres() / TENTH - 20, high.nanometres() / TENTH + 20)
                .filter(tenths -> tenths > 2)
                .filter(tenths -> tenths <= 30 || (tenths <= 200 && tenths % 5 == 0) || tenths % 10 == 0)
                .mapToObj(tenths -> new Length(tenths * TENTH))
                .map(size -> new Mark(size.inMillimetres(), size, STOCK))
                .toList();
    }
}
