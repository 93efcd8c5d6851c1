package hornbook.indexer.fit;

import hornbook.indexer.fit.Want.Between;

/**
 * By how much one operation changes a size for the same minutes.
 *
 * @param larger whether it makes it larger
 * @param least by which it changes it, mm
 * @param most mm
 * @param minutes of units of work, without setting up
 */
record Stroke(boolean larger, double least, double most, double minutes) {

    /** From where it can end there. */
    Between begun(double low, double high) {
        return larger ? new Between(low - most, high - least) : new Between(low + least, high + most);
    }

    /** Where it can end from there. */
    Between ended(double low, double high) {
        return larger ? new Between(low + least, high + most) : new Between(low - most, high - least);
    }

    /** The same where at least so much has to be taken. */
    Stroke taking(double stock) {
        return stock <= least ? this : new Stroke(larger, stock, most, minutes);
    }

    boolean empty() {
        return least > most + Formula.NOTHING;
    }
}
