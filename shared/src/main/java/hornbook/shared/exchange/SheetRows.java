package hornbook.shared.exchange;

import hornbook.shared.store.Writing;

/** Takes the rows of one kind of sheet into a deed. */
interface SheetRows {
    /**
     * Takes one row.
     *
     * @throws CellRefused naming the field that cannot be taken
     * @throws hornbook.shared.shop.BadInput where the books turn it away
     */
    void take(Writing writing, Cells cells);

    /** The cells of a row by field, stripped; empty where there is none. */
    interface Cells {
        String cell(String field);

        default String needed(String field) {
            String cell = cell(field);
            if (cell.isEmpty()) {
                throw new CellRefused(field, "is empty: this row needs one");
            }
            return cell;
        }
    }
}
