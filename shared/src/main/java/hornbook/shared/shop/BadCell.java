package hornbook.shared.shop;

/** A cell that cannot be read: which column, and why with what to write instead. */
public final class BadCell extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String column;

    BadCell(String column, String why) {
        super(why);
        this.column = column;
    }

    public String column() {
        return column;
    }

    /** Why, without the column. */
    public String why() {
        return String.valueOf(getMessage());
    }
}
