package hornbook.shared.measure;

/**
 * A twist drill.
 *
 * @param kind the series it belongs to
 * @param size as written in the trade: {@code #40}, {@code F}, {@code 7/64}, {@code 2.5 mm}
 * @param diameter nominal
 */
public record Drill(Kind kind, String size, Length diameter, Provenance provenance) {

    /** The four series a drill stand holds. */
    public enum Kind {
        NUMBER,
        LETTER,
        FRACTION,
        METRIC
    }

    /** Written so that it can be read again: {@code #40 drill}, {@code F drill}, {@code 7/64" drill}. */
    public String text() {
        return size + (kind == Kind.FRACTION ? "\" drill" : " drill");
    }
}
