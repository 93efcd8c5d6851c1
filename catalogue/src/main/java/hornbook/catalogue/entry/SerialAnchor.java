package hornbook.catalogue.entry;

/**
 * A number believed reached in a year.
 *
 */
public record SerialAnchor(long serial, int year) {

    static SerialAnchor from(Fields in) {
        return new SerialAnchor(in.serial("serial"), in.whole("year"));
    }
}
