package hornbook.shared.job;

import hornbook.shared.shop.BadCell;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Columns;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.MapRow;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import java.util.ArrayList;
import java.util.List;

/** The map of a horn: what each key turns on, its spring, its rim, as measured on a job. */
public final class MapBook {
    private final Books books;

    public MapBook(Books books) {
        this.books = books;
    }

    /**
     * Writes down one measure of a key; the others stay.
     *
     * @param key what the key is called: palm F
     * @param cup id of its cup, empty where it has none
     * @param value as read; mm without the unit where it is a length
     */
    public Deed measure(String job, String key, String cup, KeyField field, String value) {
        field.refuse(value.strip());
        return books.write(field.word() + " of " + key + " on " + job, w -> {
            MapRow row = row(w, JobBook.open(w, job), key, cup);
            List<String> cells = new ArrayList<>(columns().cells(row));
            cells.set(columns().names().indexOf(field.column()), value.strip().replace(',', '.'));
            w.put(read(cells, field, value));
        });
    }

    private static MapRow read(List<String> cells, KeyField field, String value) {
        try {
            return columns().record(cells);
        } catch (BadCell e) {
            throw new BadInput(field.title() + ": \u201c" + value + "\u201d is not a size in mm: write it as 2.38");
        }
    }

    private static MapRow row(Writing w, Job on, String key, String cup) {
        return w.where(MapRow.class, "job", on.id()).stream()
                .filter(row -> row.key().equals(key))
                .findFirst()
                .orElseGet(() -> fresh(w.nextId(MapRow.class), on, key, cup));
    }

    private static MapRow fresh(String id, Job on, String key, String cup) {
        List<String> cells = new ArrayList<>();
        for (String column : columns().names()) {
            cells.add(
                    switch (column) {
                        case "id" -> id;
                        case "job" -> on.id();
                        case "horn" -> on.horn();
                        case "key" -> key;
                        case "cup" -> cup;
                        default -> "";
                    });
        }
        return columns().record(cells);
    }

    private static Columns<MapRow> columns() {
        return Kind.of(MapRow.class).columns();
    }
}
