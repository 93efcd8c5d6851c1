package hornbook.catalogue.entry;

/**
 * What a fact of the horn asks of a dimension that nobody asked for: a cup its pad, a rod its tube.
 *
 * @param middle the size it should have: a formula over facts, mm
 * @param within plus and minus, mm
 */
public record Implied(String middle, double within) {
    static Implied from(Fields in) {
        return new Implied(in.text("middle"), in.number("within"));
    }
}
