package hornbook.shared.measure;

/**
 * A screw thread standard and its form.
 *
 * <p>Depth of the full thread in pitches, both sides together, is what a percentage of thread is reckoned on
 * (Machinery's Handbook): 60° forms 1.5 H = 1.299038 p (ISO 68-1, ASME B1.1), BA 1.2 p (BS 93), Whitworth form
 * 1.280654 p (BS 84), Loewenherz 1.5 p.
 */
public enum ThreadSystem {
    ISO_METRIC("ISO-M", "ISO metric", 60, 1.299038),
    UNIFIED("UN", "Unified inch", 60, 1.299038),
    BA("BA", "British Association", 47.5, 1.2),
    WHITWORTH("BSW", "British Standard Whitworth", 55, 1.280654),
    BRITISH_FINE("BSF", "British Standard Fine", 55, 1.280654),
    MODEL_ENGINEER("ME", "Model engineer, Whitworth form", 55, 1.280654),
    LOEWENHERZ("Loewenherz", "Loewenherz", 53 + 8 / 60.0, 1.5);

    private final String tableName;
    private final String shown;
    private final double angle;
    private final double depth;

    ThreadSystem(String tableName, String shown, double angle, double depth) {
        this.tableName = tableName;
        this.shown = shown;
        this.angle = angle;
        this.depth = depth;
    }

    /** The standard's name for people. */
    public String shown() {
        return shown;
    }

    /** Included angle of the form, in degrees. */
    public double angle() {
        return angle;
    }

    /** Full depth of thread, both sides together, in pitches. */
    public double fullDepth() {
        return depth;
    }

    /** Whether its sizes are named in inches or numbers and its pitches in threads per inch. */
    public boolean inch() {
        return this == UNIFIED || this == WHITWORTH || this == BRITISH_FINE || this == MODEL_ENGINEER;
    }

    static ThreadSystem ofTable(String name) {
        for (ThreadSystem system : values()) {
            if (system.tableName.equals(name)) {
                return system;
            }
        }
        throw new IllegalStateException("threads.csv names an unknown standard: " + name);
    }
}
