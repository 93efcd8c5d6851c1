package hornbook.shared.stock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** What is done to drawers: labelled, looked through. Each call is one deed that can be undone. */
public final class DrawerBook {
    private final Books books;
    private final Places places;

    public DrawerBook(Books books) {
        this.books = books;
        this.places = new Places(books);
    }

    /** Puts a new label on a drawer. */
    public Deed label(String called, String label, String by) {
        return change(
                called,
                "label " + called + " “" + label + "”",
                d -> new Drawer(
                        d.id(),
                        d.cabinet(),
                        d.row(),
                        d.column(),
                        label,
                        by,
                        d.contentsAsFound(),
                        label.isBlank() ? LabelState.NONE : LabelState.RIGHT,
                        d.lastLookedThrough(),
                        d.note()));
    }

    /**
     * Looked through: what is in it, and whether its label says so.
     *
     * @param contents in a few words; null keeps what stands
     */
    public Deed lookedThrough(String called, @Nullable String contents, boolean labelIsRight) {
        return change(
                called,
                "look through " + called,
                d -> new Drawer(
                        d.id(),
                        d.cabinet(),
                        d.row(),
                        d.column(),
                        d.labelAsWritten(),
                        d.writtenBy(),
                        contents == null ? d.contentsAsFound() : contents,
                        state(d, labelIsRight),
                        books.today(),
                        d.note()));
    }

    /**
     * Looked through, and its label written anew to say what is in it.
     *
     * @param contents in a few words; null keeps what stands
     */
    public Deed putRight(String called, String label, @Nullable String contents, String by) {
        return change(
                called,
                "put the label of " + called + " right: “" + label + "”",
                d -> new Drawer(
                        d.id(),
                        d.cabinet(),
                        d.row(),
                        d.column(),
                        label,
                        by,
                        contents == null ? d.contentsAsFound() : contents,
                        label.isBlank() ? LabelState.NONE : LabelState.RIGHT,
                        books.today(),
                        d.note()));
    }

    private static LabelState state(Drawer drawer, boolean labelIsRight) {
        if (drawer.labelAsWritten().isBlank()) {
            return LabelState.NONE;
        }
        return labelIsRight ? LabelState.RIGHT : LabelState.DRIFTED;
    }

    private Deed change(String called, String title, UnaryOperator<Drawer> how) {
        Drawer drawer = places.drawer(called)
                .orElseThrow(
                        () -> new BadInput("there is no drawer “" + called + "”: look it up with “hornbook find”"));
        return books.write(title, w -> w.put(how.apply(drawer)));
    }

    /** The drawers that such a deed touched, as they are now. */
    public List<DrawerCard> after(Deed deed) {
        Stock stock = new Stock(books);
        return books.touched(deed, Drawer.class).stream()
                .flatMap(id -> stock.drawer(id).stream())
                .toList();
    }
}
