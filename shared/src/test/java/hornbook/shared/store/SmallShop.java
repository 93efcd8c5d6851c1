package hornbook.shared.store;

import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** An invented shop of one chest, one drawer and one lot. */
public final class SmallShop {
    public static final LocalDate DAY = LocalDate.of(2026, 9, 30);
    public static final String LOT = "lot-0001";

    private SmallShop() {}

    /** Makes the shop and opens it to write. */
    public static Books in(Path folder) {
        Books books = Books.open(folder, Access.WRITE, DAY);
        books.write("furnish", w -> {
            w.put(new Cabinet("c-oak", "Oak chest", 2, 2, "window", ""));
            w.put(drawer(1, "SCREWS"));
            w.put(lot(LOT, "d-1"));
        });
        return books;
    }

    /** The chest's drawer, at a column of its first row. */
    public static Drawer drawer(int column, String label) {
        return new Drawer("d-" + column, "c-oak", 1, column, label, "N.O.", "screws", LabelState.RIGHT, null, "");
    }

    public static Lot lot(String id, String drawer) {
        return new Lot(
                id,
                drawer,
                null,
                "part-neck-screw",
                "neck screw",
                List.of(),
                List.of(),
                "length=12 mm",
                "M3x0.5",
                "steel",
                "",
                LotState.SALVAGED,
                Count.ZERO,
                false,
                false,
                null,
                null,
                "");
    }

    public static Movement move(String id, int qty) {
        return new Movement(id, DAY, LOT, MovementKind.CORRECTION, qty, null, null, null, null, null, "");
    }
}
