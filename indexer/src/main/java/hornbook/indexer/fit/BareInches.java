package hornbook.indexer.fit;

import hornbook.shared.shop.BadInput;
import java.util.DoubleSummaryStatistics;
import java.util.regex.Pattern;

/** A number without a unit is millimetres; {@code .112} for a rod was hardly meant so. */
record BareInches(OnHand onHand, Crafts crafts) {
    private static final Pattern BARE = Pattern.compile("\\d*[.,]?\\d+");
    /** So many times under the least there is, it is another unit and no other size. */
    private static final double FAR = 5;

    private static final double INCH = 25.4;

    /**
     * @param mm what was read
     * @throws BadInput where it is far under all that is on hand, and in inches is not
     */
    void refuse(String dimension, String text, double mm) {
        if (mm >= 1 || !BARE.matcher(text.strip()).matches()) {
            return;
        }
        DoubleSummaryStatistics sizes = onHand.sizes(crafts, dimension);
        double inches = mm * INCH;
        if (sizes.getCount() > 0
                && mm * FAR < sizes.getMin()
                && inches >= sizes.getMin() / 2
                && inches <= sizes.getMax() * 2) {
            throw new BadInput(dimension + " " + text.strip() + " is read as " + Shown.mm(mm)
                    + ", and the least on hand is " + Shown.mm(sizes.getMin()) + ": write " + text.strip()
                    + " in for inches, or " + text.strip() + " mm if it is meant");
        }
    }
}
