package hornbook.catalogue.entry;

/**
 * From low to high, both included, in the unit of what it belongs to.
 *
 */
public record Span(double low, double high) {

    /** Whether the value lies inside, ends included. */
    public boolean holds(double value) {
        return value >= low && value <= high;
    }

    static Span from(Fields in) {
        return new Span(in.number("low"), in.number("high"));
    }
}
