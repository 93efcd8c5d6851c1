package hornbook.catalogue.entry;

/**
 * How often a seller's horns were of one model or pattern.
 *
 * @param of a model's id, the beginning all models of a pattern share, or `unlisted`
 * @param weight share of the seller's horns, 0 to 1
 */
public record MadeBy(String of, double weight) {

    /** The word for a maker that no entry describes. */
    public static final String UNLISTED = "unlisted";

    /** Whether the model of that id is meant: its own id, or a pattern it belongs to. */
    public boolean covers(String model) {
        return model.equals(of) || model.startsWith(of + "-");
    }

    static MadeBy from(Fields in) {
        return new MadeBy(in.text("of"), in.number("weight"));
    }
}
