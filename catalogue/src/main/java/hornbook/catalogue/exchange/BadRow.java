package hornbook.catalogue.exchange;

/** A row that cannot be taken: which field, and why with what to write instead. */
final class BadRow extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String field;

    BadRow(String field, String why) {
        super(why);
        this.field = field;
    }

    String field() {
        return field;
    }

    String why() {
        return String.valueOf(getMessage());
    }
}
