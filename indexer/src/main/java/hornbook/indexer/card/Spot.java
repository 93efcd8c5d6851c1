package hornbook.indexer.card;

import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Place;
import org.jspecify.annotations.Nullable;

/**
 * Where something lies.
 *
 * @param label as written on the drawer, empty where it has none; another place's name
 * @param where piece of furniture and spot
 * @param remark where the label cannot be trusted, what it says
 */
record Spot(String id, String label, String where, @Nullable String remark) {

    static Spot of(Drawer drawer, @Nullable Cabinet cabinet) {
        String furniture = cabinet == null ? drawer.cabinet() : cabinet.name();
        String where = furniture + ", row " + drawer.row() + ", column " + drawer.column();
        return new Spot(drawer.id(), drawer.labelAsWritten(), where, remark(drawer));
    }

    static Spot of(Place place) {
        return new Spot(place.id(), place.name(), place.where(), null);
    }

    private static @Nullable String remark(Drawer drawer) {
        if (drawer.labelState() == LabelState.DRIFTED
                && !drawer.labelAsWritten().isBlank()) {
            return "the label says " + drawer.labelAsWritten() + ", but it holds "
                    + (drawer.contentsAsFound().isBlank() ? "nothing" : drawer.contentsAsFound())
                    + ": label and contents disagree";
        }
        return drawer.labelState() == LabelState.NONE ? "the drawer has no label" : null;
    }

    Shown shown() {
        boolean misleads = remark != null && !label.isBlank();
        return new Shown(
                id, label, where, null, null, remark, null, misleads ? Shown.Heed.MISLABELLED : Shown.Heed.OPEN);
    }
}
