package hornbook.catalogue.entry;

/**
 * A confusion with a name: what is so is often taken for something else.
 *
 * @param truth value that is so
 * @param seen value that is recorded instead
 * @param rate share of looks at the true value that do
 */
public record Mistake(String truth, String seen, double rate) {

    static Mistake from(Fields in) {
        return new Mistake(in.text("truth"), in.text("seen"), in.number("rate"));
    }
}
