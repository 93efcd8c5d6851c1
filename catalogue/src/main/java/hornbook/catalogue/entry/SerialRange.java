package hornbook.catalogue.entry;

/**
 * A run of numbers, both ends included.
 *
 */
public record SerialRange(long from, long to) {

    static SerialRange from(Fields in) {
        return new SerialRange(in.serial("from"), in.serial("to"));
    }
}
