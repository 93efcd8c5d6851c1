package hornbook.shared.measure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Wire and sheet gauges, from the shipped table; each row names its own source. */
public record GaugeTable(List<WireGauge> rows) {

    public GaugeTable {
        rows = List.copyOf(rows);
    }

    static GaugeTable load() {
        return new GaugeTable(Table.rows(
                "gauges.csv",
                row -> new WireGauge(
                        GaugeSystem.ofTable(row.getField("gauge")),
                        row.getField("number"),
                        Length.ofInches(row.getField("inch")),
                        Provenance.of(row))));
    }

    /** A number of a gauge, written {@code 18}, {@code 000} or {@code 3/0}. */
    public Optional<WireGauge> named(GaugeSystem system, String number) {
        String plain = number.matches("[1-9]/0") ? "0".repeat(number.charAt(0) - '0') : number;
        String unpadded = plain.matches("0+") ? plain : plain.replaceFirst("^0+", "");
        return of(system).filter(row -> row.number().equals(unpadded)).findFirst();
    }

    /** The number of a gauge nearest to a size; of two equally near the thinner. */
    public WireGauge nearest(GaugeSystem system, Length size) {
        return of(system)
                .min(Comparator.comparing(
                                (WireGauge row) -> row.size().minus(size).abs())
                        .thenComparing(WireGauge::size))
                .orElseThrow();
    }

    /** The rows of one gauge, in the order of the table. */
    public Stream<WireGauge> of(GaugeSystem system) {
        return rows.stream().filter(row -> row.system() == system);
    }
}
