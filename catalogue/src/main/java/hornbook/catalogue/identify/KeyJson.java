package hornbook.catalogue.identify;

import hornbook.shared.shop.MapRow;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** A measured key as it stands in a model's entry; what was not measured has no field. */
record KeyJson(ObjectNode into) {
    void write(MapRow row) {
        text("key", row.key());
        text("cup", row.cup());
        text("turns_on", row.turnsOn());
        text("rod", row.rod());
        number("diameter", row.diameterMm());
        number("length", row.lengthMm());
        text("thread", row.thread());
        text("draws_out", row.drawsOut());
        text("spring", row.spring());
        number("spring_size", row.springMm());
        number("spring_length", row.springLengthMm());
        number("cup_inside", row.cupInsideMm());
        number("rim_inside", row.rimInsideMm());
        number("rim_outside", row.rimOutsideMm());
        number("resonator", row.resonatorMm());
        text("source", "this shop, " + row.job());
    }

    private void text(String name, @Nullable String value) {
        if (value != null && !value.isEmpty()) {
            into.put(name, value);
        }
    }

    private void number(String name, @Nullable BigDecimal value) {
        if (value != null) {
            into.put(name, value);
        }
    }
}
