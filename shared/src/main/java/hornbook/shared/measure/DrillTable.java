package hornbook.shared.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The drills of a well-kept stand: numbers and letters (ASME B94.11M, from the shipped table), fractions of an inch by
 * 64ths to 1/2, and metric by 0.05 mm to 3 mm, then by 0.1 mm with the quarters to 13 mm (common stock, from memory).
 */
public record DrillTable(List<Drill> drills) {
    private static final Provenance FRACTIONS = new Provenance("fractions of an inch, by 64ths", "computed");
    private static final Provenance METRIC = new Provenance("common metric stock (as ISO 235)", "from memory");

    public DrillTable {
        drills = List.copyOf(drills);
    }

    static DrillTable load() {
        List<Drill> all = new ArrayList<>(Table.rows(
                "drills.csv",
                row -> new Drill(
                        row.getField("kind").equals("number") ? Drill.Kind.NUMBER : Drill.Kind.LETTER,
                        row.getField("size"),
                        Length.ofInches(row.getField("inch")),
                        Provenance.of(row))));
        IntStream.rangeClosed(1, 32).mapToObj(DrillTable::fraction).forEach(all::add);
        metricHundredths().mapToObj(DrillTable::metric).forEach(all::add);
        return new DrillTable(all);
    }

    /** The drill of a series with this size, as the table writes it ({@code #40}, {@code F}). */
    public Optional<Drill> named(Drill.Kind kind, String size) {
        return drills.stream()
                .filter(drill -> drill.kind() == kind && drill.size().equals(size))
                .findFirst();
    }

    /** The drill of a series nearest to a diameter; of two equally near the smaller. */
    public Drill nearest(Drill.Kind kind, Length diameter) {
        return drills.stream()
                .filter(drill -> drill.kind() == kind)
                .min(Comparator.comparing((Drill drill) ->
                                drill.diameter().minus(diameter).abs())
                        .thenComparing(Drill::diameter))
                .orElseThrow();
    }

    /** The drills between two diameters, both included, smallest first. */
    public List<Drill> between(Length low, Length high) {
        return drills.stream()
                .filter(drill ->
                        drill.diameter().compareTo(low) >= 0 && drill.diameter().compareTo(high) <= 0)
                .sorted(Comparator.comparing(Drill::diameter))
                .toList();
    }

    private static Drill fraction(int sixtyFourths) {
        int shared = Math.min(64, Integer.lowestOneBit(sixtyFourths));
        return new Drill(
                Drill.Kind.FRACTION,
                sixtyFourths / shared + "/" + 64 / shared,
                new Length(sixtyFourths * LengthUnit.INCH.nanometres() / 64),
                FRACTIONS);
    }

    private static IntStream metricHundredths() {
        return IntStream.concat(
                IntStream.iterate(30, h -> h <= 300, h -> h + 5),
                IntStream.rangeClosed(301, 1300).filter(h -> h % 10 == 0 || h % 50 == 25));
    }

    private static Drill metric(int hundredths) {
        Length diameter = Length.of(BigDecimal.valueOf(hundredths, 2), LengthUnit.MILLIMETRE);
        return new Drill(Drill.Kind.METRIC, diameter.inMillimetres(), diameter, METRIC);
    }

    Stream<Drill> standard() {
        return drills.stream().filter(drill -> drill.kind() == Drill.Kind.NUMBER || drill.kind() == Drill.Kind.LETTER);
    }
}
