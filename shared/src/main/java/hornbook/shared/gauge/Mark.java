package hornbook.shared.gauge;

import hornbook.shared.gauge.GaugeAnswer.Near;
import hornbook.shared.measure.Drill;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.Provenance;
import hornbook.shared.measure.WireGauge;
import java.util.Optional;

/** A name on a scale. */
record Mark(String name, Length size, Optional<String> remark) {

    static Mark of(Drill drill) {
        return new Mark(drill.text(), drill.diameter(), remark(drill.provenance()));
    }

    static Mark of(WireGauge gauge) {
        return new Mark(gauge.text(), gauge.size(), remark(gauge.provenance()));
    }

    static Mark computed(String name, Length size) {
        return new Mark(name, size, Optional.empty());
    }

    private static Optional<String> remark(Provenance provenance) {
        return provenance.fromMemory() ? Optional.of(provenance.sureness()) : Optional.empty();
    }

    Near near(Length asked) {
        return new Near(name, size, size.minus(asked), remark);
    }
}
