package hornbook.shared.restock;

import hornbook.shared.setting.Setting;
import hornbook.shared.store.View;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * How the shop wants its stock kept.
 *
 * @param level chance of no shortage from order to arrival
 * @param reviewDays from one look at the list to the next
 * @param orderCost what one order costs beside the goods; null where not known
 * @param holdingShare what keeping goods for a year costs, as a share of their price
 */
record Keeping(double level, int reviewDays, @Nullable Double orderCost, double holdingShare) {
    /** Where the shop set nothing. */
    static final Keeping USUAL = new Keeping(0.95, 7, null, 0.25);

    /** @throws hornbook.shared.shop.BadInput where a setting cannot be used */
    static Keeping of(View view) {
        return new Keeping(
                Setting.SERVICE_LEVEL.numberOrUsual(view).doubleValue(),
                Setting.REVIEW_DAYS.numberOrUsual(view).intValue(),
                Setting.ORDER_COST.number(view).map(BigDecimal::doubleValue).orElse(null),
                Setting.HOLDING_SHARE.numberOrUsual(view).doubleValue());
    }
}
