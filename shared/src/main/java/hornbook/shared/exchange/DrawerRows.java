package hornbook.shared.exchange;

import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;

/** Drawers: what their labels say and what was found in them. */
final class DrawerRows implements SheetRows {
    private final SheetPlaces places;
    private final SheetDates looked;
    private final Set<String> seen = new HashSet<>();

    DrawerRows(SheetPlaces places, SheetDates looked) {
        this.places = places;
        this.looked = looked;
    }

    @Override
    public void take(Writing writing, Cells cells) {
        LocalDate lookedThrough = looked.read(cells.cell("last_looked_through"));
        Drawer drawer = places.drawer(writing, "place", cells.needed("place"));
        if (!seen.add(drawer.id())) {
            throw new CellRefused("place", "“" + cells.cell("place") + "” stands in an earlier row: keep one of them");
        }
        String label = cells.cell("label");
        places.put(
                writing,
                new Drawer(
                        drawer.id(),
                        drawer.cabinet(),
                        drawer.row(),
                        drawer.column(),
                        label,
                        drawer.writtenBy(),
                        cells.cell("contents"),
                        label.isEmpty() ? LabelState.NONE : LabelState.RIGHT,
                        lookedThrough,
                        cells.cell("note")));
    }
}
