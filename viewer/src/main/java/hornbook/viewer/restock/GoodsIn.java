package hornbook.viewer.restock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.stock.Receipt;
import hornbook.shared.supply.Judged;
import hornbook.shared.supply.Verdict;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What a person wrote down while unpacking, as typed.
 *
 * @param substitute the lot they went into where they are not what was ordered; blank else
 * @param price of one piece; blank where it is not known
 * @param verdict none where absent
 */
record GoodsIn(
        String pieces,
        String substitute,
        String price,
        @Nullable Verdict verdict,
        String why) {
    /** @throws BadInput naming the field that cannot be read */
    Receipt receipt(String order) {
        String note = substitute.isBlank() ? "" : "a substitute";
        return new Receipt(number(), null, order, null, money(), note);
    }

    @Nullable
    Judged judged() {
        return verdict == null ? null : new Judged(verdict, why);
    }

    private int number() {
        try {
            return Integer.parseInt(pieces.strip());
        } catch (NumberFormatException e) {
            throw new BadInput("“" + pieces + "” is no number of pieces: write a whole number, as 12");
        }
    }

    private @Nullable BigDecimal money() {
        if (price.isBlank()) {
            return null;
        }
        try {
            return new BigDecimal(price.strip().replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new BadInput("“" + price + "” is no price: write what one piece cost, as 0.85, or leave it empty");
        }
    }
}
