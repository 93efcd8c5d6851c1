package hornbook.catalogue.entry;

import java.util.Map;

/**
 * Shares over the values of a trait; they add up to 1.
 *
 * @param of share by value id
 */
public record Shares(Map<String, Double> of) implements Distribution {

    /** Keeps its own copies. */
    public Shares {
        of = Ordered.copy(of);
    }

    /** The share of a value; 0 where the model does not name it. */
    public double share(String value) {
        return of.getOrDefault(value, 0.0);
    }
}
