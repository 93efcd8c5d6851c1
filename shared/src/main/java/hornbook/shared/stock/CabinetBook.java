package hornbook.shared.stock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.FreeId;

/** Furniture that is set up. Each call is one deed that can be undone. */
public final class CabinetBook {
    /** As many as the books allow each way. */
    private static final int MOST = 99;

    private final Books books;

    public CabinetBook(Books books) {
        this.books = books;
    }

    /**
     * A cabinet with a drawer at each spot, none of them labelled yet.
     *
     * @param where where it stands; may be empty
     */
    public Deed add(String name, int rows, int columns, String where) {
        String called = name.strip();
        if (called.isEmpty()) {
            throw new BadInput("the cabinet has no name: say what you call it");
        }
        if (rows < 1 || columns < 1 || rows > MOST || columns > MOST) {
            throw new BadInput("a cabinet of " + rows + " by " + columns
                    + " drawers cannot be drawn: rows and columns are 1 to " + MOST);
        }
        if (books.all(Cabinet.class).stream().anyMatch(c -> c.name().equalsIgnoreCase(called))) {
            throw new BadInput("there is a cabinet “" + called + "” already: give this one another name");
        }
        return books.write("set up cabinet " + called, w -> {
            String id = FreeId.of(books, Cabinet.class, "c-", called);
            w.put(new Cabinet(id, called, rows, columns, where.strip(), ""));
            for (int row = 1; row <= rows; row++) {
                for (int column = 1; column <= columns; column++) {
                    w.put(bare(id, row, column));
                }
            }
        });
    }

    private static Drawer bare(String cabinet, int row, int column) {
        String id = cabinet.replaceFirst("^c-", "d-") + "-r" + row + "c" + column;
        return new Drawer(id, cabinet, row, column, "", "", "", LabelState.NONE, null, "");
    }
}
