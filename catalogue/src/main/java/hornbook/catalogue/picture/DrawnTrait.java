package hornbook.catalogue.picture;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A trait whose every value is drawn.
 *
 * @param trait its id
 * @param bits expected information of its answer over the models of the example shop, each as likely as another;
 *     empty where none of them states it
 * @param telling among the traits with the most bits
 * @param stop guards a quirk of caution stop
 * @param values its values, in the order of the vocabulary
 */
public record DrawnTrait(String trait, OptionalDouble bits, boolean telling, boolean stop, List<String> values) {

    /** Keeps its own copy. */
    public DrawnTrait {
        values = List.copyOf(values);
    }

    /** A line of the list: trait, bits or a dash, reasons, values; parted by tabs. */
    static DrawnTrait of(String line) {
        List<String> fields = List.of(line.split("\t", -1));
        if (fields.size() != 4) {
            throw new IllegalArgumentException("four fields parted by tabs are wanted in: " + line);
        }
        OptionalDouble bits = fields.get(1).equals("-")
                ? OptionalDouble.empty()
                : OptionalDouble.of(Double.parseDouble(fields.get(1)));
        List<String> why = List.of(fields.get(2).split(" ", -1));
        return new DrawnTrait(
                fields.get(0),
                bits,
                why.contains("telling"),
                why.contains("stop"),
                List.of(fields.get(3).split(" ", -1)));
    }
}
