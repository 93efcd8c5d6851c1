package hornbook.shared.measure;

/** The standard tables, read once at start and handed on. */
public record StandardSizes(DrillTable drills, GaugeTable gauges, ThreadTable threads, LimitsTable limits) {

    /**
     * Reads the shipped tables: some milliseconds.
     *
     * @throws IllegalStateException if the build left one out
     */
    public static StandardSizes load() {
        return new StandardSizes(DrillTable.load(), GaugeTable.load(), ThreadTable.load(), LimitsTable.load());
    }

    /** Reads sizes as people write them, against these tables. */
    public SizeReader reader() {
        return new SizeReader(this);
    }
}
