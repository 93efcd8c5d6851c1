package hornbook.shared.exchange;

/** A cell that cannot be taken: its field, and why with what to write instead. */
final class CellRefused extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String field;

    CellRefused(String field, String why) {
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
