package hornbook.indexer.index;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Small shops for tests. */
public final class Shops {
    public static final SizeReader SIZES = StandardSizes.load().reader();

    private Shops() {}

    public static Books open(Path folder) {
        return Books.open(folder, Access.WRITE, LocalDate.parse("2026-09-30"));
    }

    public static ShopIndex index(Books books) {
        return ShopIndex.open(books, () -> Catalogue.open(books.folder().resolve("entries")), () -> SIZES);
    }

    /** A cabinet with two drawers, rollers in the one labelled discs. */
    public static void furnish(Books books) {
        books.write("furnish", w -> {
            w.put(new Cabinet("c-card", "Card catalog", 2, 2, "under the window", ""));
            w.put(drawer("d-1", 1, "CORV. DISCS", "roller", LabelState.DRIFTED));
            w.put(drawer("d-2", 2, "buttons, misc.", "snap-on disc", LabelState.RIGHT));
            w.put(lot("lot-0001", "d-1", "part-roller", "roller, hard rubber", "length=14.5 mm;od=5.4 mm"));
            w.put(lot("lot-0002", "d-2", "part-reso-snap", "snap-on disc, 19 mm", "size=19 mm"));
            w.put(count("v-1", "lot-0001", 6));
            w.put(count("v-2", "lot-0002", 3));
        });
    }

    public static Drawer drawer(String id, int column, String label, String contents, LabelState state) {
        return new Drawer(id, "c-card", 1, column, label, "A.T.", contents, state, null, "");
    }

    public static Lot lot(String id, String drawer, String item, String title, String dimensions) {
        return new Lot(
                id,
                drawer,
                null,
                item,
                title,
                List.of(),
                List.of(),
                dimensions,
                null,
                "",
                "",
                LotState.SALVAGED,
                Count.ZERO,
                false,
                false,
                null,
                null,
                "");
    }

    public static Movement count(String id, String lot, int quantity) {
        return new Movement(
                id,
                LocalDate.parse("2026-09-01"),
                lot,
                MovementKind.OPENING,
                quantity,
                null,
                null,
                null,
                null,
                null,
                "");
    }
}
