package hornbook.indexer.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Thing;
import hornbook.catalogue.entry.Tool;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.ShopTool;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Names the drawer of each thing wanted. */
final class FetchList {
    private static final int LOTS_OF_A_PART = 3;
    private static final int SPARES = 12;
    private static final int MANY = 5;

    private final Catalogue catalogue;
    private final Wants wants;
    private final Shelves shelves;

    FetchList(Catalogue catalogue, Wants wants, Shelves shelves) {
        this.catalogue = catalogue;
        this.wants = wants;
        this.shelves = shelves;
    }

    /** Parts first, as they are what a job waits for; then tools, supplies, and spares for the model. */
    List<Fetch> list() {
        List<Thing> things = wants.things();
        List<Fetch> list = new ArrayList<>();
        things.stream().filter(Part.class::isInstance).forEach(p -> list.addAll(lots(p)));
        things.stream().filter(Tool.class::isInstance).forEach(t -> list.add(tool((Tool) t)));
        things.stream()
                .filter(t -> !(t instanceof Part) && !(t instanceof Tool))
                .forEach(s -> list.addAll(lots(s)));
        Set<String> named = new HashSet<>();
        list.forEach(f -> named.add(f.lot() == null ? "" : f.lot()));
        shelves.spares().stream()
                .filter(l -> !named.contains(l.id()))
                .limit(SPARES)
                .forEach(l -> list.add(
                        fetch(l, catalogue.thing(l.item()).map(this::kind).orElse("part"), "for this model")));
        return list;
    }

    private String kind(Thing thing) {
        return thing.entryKind().word();
    }

    private List<Fetch> lots(Thing thing) {
        List<Lot> lots = shelves.lots(thing.id());
        if (lots.isEmpty() || lots.getFirst().count().none()) {
            return List.of(none(thing, lots.isEmpty() ? null : lots.getFirst()));
        }
        boolean part = thing instanceof Part;
        Shelves.Near best = shelves.near(lots.getFirst());
        return lots.stream()
                .filter(l -> !l.count().none() && shelves.near(l) == best)
                .limit(part && best == Shelves.Near.MODEL ? LOTS_OF_A_PART : 1)
                .map(l -> fetch(l, kind(thing), note(thing, l, lots)))
                .toList();
    }

    private @Nullable String note(Thing thing, Lot lot, List<Lot> lots) {
        List<String> notes = new ArrayList<>();
        String which = wants.which(thing.id());
        if (!which.isEmpty()) {
            notes.add(which);
        }
        long drawers = lots.stream().map(Lot::lies).distinct().count();
        if (lots.size() > MANY && shelves.near(lot) != Shelves.Near.MODEL) {
            notes.add(lots.size() + " lots by size in " + drawers + " places: measure first");
        }
        if (shelves.near(lot) == Shelves.Near.OTHER_MAKE) {
            notes.add("of another make: measure before you use it");
        }
        if (Shelves.harmed(lot)) {
            notes.add("harmed: look before you count on it");
        }
        if (!lot.note().isEmpty()) {
            notes.add(lot.note());
        }
        return notes.isEmpty() ? null : String.join("; ", notes);
    }

    private Fetch fetch(Lot lot, String kind, @Nullable String note) {
        return new Fetch(
                lot.item(),
                lot.title(),
                kind,
                lot.id(),
                lot.lies(),
                shelves.label(lot.lies()),
                lot.count().written(),
                shelves.near(lot) == Shelves.Near.OTHER_MAKE,
                note,
                wants.wantedBy(lot.item()));
    }

    private Fetch none(Thing thing, @Nullable Lot empty) {
        String which = wants.which(thing.id());
        return new Fetch(
                thing.id(),
                thing.title(),
                kind(thing),
                empty == null ? null : empty.id(),
                empty == null ? null : empty.lies(),
                empty == null ? null : shelves.label(empty.lies()),
                "0",
                false,
                (which.isEmpty() ? "" : which + "; ") + "none here: order it, or do without",
                wants.wantedBy(thing.id()));
    }

    private Fetch tool(Tool tool) {
        Optional<ShopTool> own = shelves.tool(tool.id());
        return own.map(t -> fetch(tool, t, false)).orElseGet(() -> other(tool));
    }

    /** Another tool of the shop that serves one of the quirks that want this one. */
    private Fetch other(Tool tool) {
        List<String> quirks = wants.wantedBy(tool.id());
        return catalogue.all(Tool.class).values().stream()
                .filter(t -> t.serves().stream().anyMatch(quirks::contains))
                .flatMap(t -> shelves.tool(t.id()).stream())
                .findFirst()
                .map(t -> fetch(tool, t, true))
                .orElseGet(() -> none(tool, null));
    }

    private Fetch fetch(Tool wanted, ShopTool own, boolean substitute) {
        String place = own.drawer() != null ? own.drawer() : own.place();
        List<String> notes = new ArrayList<>();
        if (substitute) {
            notes.add("instead of " + wanted.title());
        }
        if (!own.state().isEmpty() && !own.state().equals("good")) {
            notes.add(own.state());
        }
        if (!own.note().isEmpty()) {
            notes.add(own.note());
        }
        return new Fetch(
                wanted.id(),
                own.title(),
                "tool",
                null,
                place,
                place == null ? null : shelves.label(place),
                "1",
                substitute,
                notes.isEmpty() ? null : String.join("; ", notes),
                wants.wantedBy(wanted.id()));
    }
}
