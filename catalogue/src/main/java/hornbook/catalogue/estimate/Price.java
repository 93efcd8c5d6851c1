package hornbook.catalogue.estimate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * What work may cost: a span to tell, and the sum at which work stops and the owner is asked. Minutes go in unrounded;
 * money is rounded once, to whole cents.
 *
 * @param usual as often under as over: never told as the price
 * @param upTo under in four of five
 * @param materials with handling; in both sums
 * @param stopLimit the next whole sum from {@code upTo} on
 * @param minimum true where the smallest charge is more than the usual work
 */
public record Price(BigDecimal usual, BigDecimal upTo, BigDecimal materials, BigDecimal stopLimit, boolean minimum) {
    private static final BigDecimal HOUR = BigDecimal.valueOf(60);
    private static final int CENTS = 2;

    /** @param cost of materials as bought */
    public static Price of(EstimateAnswer time, Rates rates, BigDecimal cost) {
        BigDecimal materials = cost.multiply(BigDecimal.ONE.add(rates.handling()));
        BigDecimal upTo = labour(time.p80Min(), rates).add(materials).setScale(CENTS, RoundingMode.HALF_UP);
        return new Price(
                labour(time.p50Min(), rates).add(materials).setScale(CENTS, RoundingMode.HALF_UP),
                upTo,
                materials.setScale(CENTS, RoundingMode.HALF_UP),
                upTo.setScale(0, RoundingMode.CEILING),
                work(time.p50Min(), rates).compareTo(rates.minimum()) < 0);
    }

    private static BigDecimal labour(long minutes, Rates rates) {
        return work(minutes, rates).max(rates.minimum());
    }

    private static BigDecimal work(long minutes, Rates rates) {
        return rates.hour().multiply(BigDecimal.valueOf(minutes)).divide(HOUR, MathContext.DECIMAL64);
    }
}
