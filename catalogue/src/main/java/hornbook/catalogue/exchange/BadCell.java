package hornbook.catalogue.exchange;

/** A cell that cannot be what its column holds; its row is refused. */
final class BadCell extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String field;
    private final String why;

    BadCell(String field, String why) {
        super(field + ": " + why);
        this.field = field;
        this.why = why;
    }

    String field() {
        return field;
    }

    String why() {
        return why;
    }
}
