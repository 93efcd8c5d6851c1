package hornbook.viewer.work;

/**
 * How far work has come.
 *
 * @param done units done
 * @param total units in all; 0 where that is not known
 * @param doing what is being done, for a person to read
 */
public record Reached(long done, long total, String doing) {
    /** Between 0 and 1, or -1 where the total is not known. */
    public double fraction() {
        return total > 0 ? Math.min(1, (double) done / total) : -1;
    }
}
