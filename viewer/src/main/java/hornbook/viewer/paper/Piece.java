package hornbook.viewer.paper;

/** What stands in a column and is not parted. Lengths in millimetres. */
public interface Piece {
    /** How tall it is at that width, with the space that parts it from the next. */
    double height(Sheet sheet, double width);

    /** Puts it on the page, its upper left corner at x, y. */
    void draw(Sheet sheet, double x, double y, double width);

    /** Whether it may not stand last in a column. */
    default boolean leads() {
        return false;
    }
}
