package hornbook.shared.measure;

/**
 * A size that goes by a name.
 *
 * @param name as we write it: {@code #40 drill}, {@code AWG 18}
 */
public record NamedSize(String name, Length length, Provenance provenance) {

    static NamedSize of(Drill drill) {
        return new NamedSize(drill.text(), drill.diameter(), drill.provenance());
    }

    static NamedSize of(WireGauge gauge) {
        return new NamedSize(gauge.text(), gauge.size(), gauge.provenance());
    }
}
