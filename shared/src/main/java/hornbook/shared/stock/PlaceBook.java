package hornbook.shared.stock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Place;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.FreeId;
import org.jspecify.annotations.Nullable;

/** Places that are no drawer: hooks, shelves, tubes, horns kept for parts. Each call is one deed that can be undone. */
public final class PlaceBook {
    private final Books books;

    public PlaceBook(Books books) {
        this.books = books;
    }

    /**
     * A place where things may lie.
     *
     * @param kind what it is in a word or two: hook, shelf, tube, parts horn
     * @param where where it is; may be empty
     * @param model what a parts horn is, where that is known
     */
    public Deed add(String name, String kind, String where, @Nullable String model, String note) {
        String called = name.strip();
        if (called.isEmpty() || kind.isBlank()) {
            throw new BadInput("the place lacks a name or a kind: say hook 7 and hook, or parts horn E and parts horn");
        }
        if (books.all(Place.class).stream().anyMatch(place -> place.name().equalsIgnoreCase(called))) {
            throw new BadInput("there is a place “" + called + "” already: give this one another name");
        }
        String id = FreeId.of(books, Place.class, "pl-", called);
        return books.write(
                "set up " + called, w -> w.put(new Place(id, called, kind.strip(), where.strip(), model, note)));
    }
}
