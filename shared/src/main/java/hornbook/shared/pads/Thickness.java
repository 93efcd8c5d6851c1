package hornbook.shared.pads;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * The thickness asked of a pad, mm.
 *
 * @param wanted that of the old good pad, null where it was not measured: then the usual ones serve
 */
record Thickness(@Nullable BigDecimal wanted) {
    // One thickness through a stack, within a tenth; usual pads are 3.8 to 4.4 (common practice).
    private static final BigDecimal WITHIN = new BigDecimal("0.1");
    private static final BigDecimal USUAL_FROM = new BigDecimal("3.8");
    private static final BigDecimal USUAL_TO = new BigDecimal("4.4");
    private static final BigDecimal USUAL = new BigDecimal("4.0");

    boolean fits(Goods goods, Tray tray) {
        BigDecimal has = tray.batch.thickness();
        if (goods == Goods.RESONATORS) {
            return true;
        }
        if (wanted != null) {
            return has != null && has.subtract(wanted).abs().compareTo(WITHIN) <= 0;
        }
        return has == null || (has.compareTo(USUAL_FROM) >= 0 && has.compareTo(USUAL_TO) <= 0);
    }

    /** How far a tray is from it; of trays that serve alike the nearer is taken. */
    BigDecimal from(Tray tray) {
        BigDecimal has = tray.batch.thickness();
        return has == null
                ? USUAL
                : has.subtract(wanted == null ? USUAL : wanted).abs();
    }
}
