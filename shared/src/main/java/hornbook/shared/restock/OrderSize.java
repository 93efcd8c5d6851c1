package hornbook.shared.restock;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How much to buy at once, before packs are counted.
 *
 * @param pieces whole; 0 where nothing is used
 * @param byCost whether ordering and holding costs decided, and not three months' use
 */
record OrderSize(int pieces, boolean byCost) {
    private static final int MONTHS = 3;
    private static final int MONTHS_A_YEAR = 12;

    /**
     * However cheap, no more than two years' use: pads harden, springs rust, tastes change, and the forecast reaches no
     * further (common practice).
     */
    private static final int LONGEST_MONTHS = 24;

    /** Where the cost of an order and a price are known what costs least, else three months' use. */
    static OrderSize of(Forecast forecast, Keeping keeping, Optional<BigDecimal> price) {
        Double orderCost = keeping.orderCost();
        if (orderCost == null || price.isEmpty() || price.get().signum() <= 0) {
            return new OrderSize((int) Math.ceil(MONTHS * forecast.perMonth() - 1e-9), false);
        }
        double holding = keeping.holdingShare() * price.get().doubleValue();
        double least = holding == 0
                ? Double.POSITIVE_INFINITY
                : least(MONTHS_A_YEAR * forecast.perMonth(), orderCost, holding);
        double kept = Math.min(least, LONGEST_MONTHS * forecast.perMonth());
        return new OrderSize((int) Math.round(kept), true);
    }

    /**
     * The size at which ordering and holding together cost least: Harris 1913, the square root of 2 D K / h.
     *
     * @param perYear pieces used in a year
     * @param orderCost of one order
     * @param holding of one piece for a year, in the same money
     */
    static double least(double perYear, double orderCost, double holding) {
        return Math.sqrt(2 * perYear * orderCost / holding);
    }
}
