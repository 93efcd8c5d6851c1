package hornbook.shared.exchange;

import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Place;
import hornbook.shared.store.View;
import hornbook.shared.store.Writing;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Places as written on a list: {@code B-4}, {@code B4} or {@code B 4} is the fourth drawer of cabinet B, row by row;
 * {@code oak r2c3} or {@code oak, row 2, col 3} says it all. What one drawer's label says means that drawer.
 */
final class SheetPlaces {
    private static final Pattern SPOT = Pattern.compile(
            "(.{1,40}?)[ ,-]+r(?:ow)? ?(\\d{1,2}),? ?c(?:ol(?:umn)?)? ?(\\d{1,2})", Pattern.CASE_INSENSITIVE);
    private static final Pattern NTH = Pattern.compile("(.{0,39}?\\p{L}) ?[-/#.]? ?(\\d{1,4})");

    /** As many as the books allow. */
    private static final int MOST = 99;

    /** A cabinet of which only numbers are known is drawn this wide until its real shape is told. */
    private static final int WIDTH = 4;

    private final Map<String, Cabinet> cabinets = new HashMap<>();
    private final Map<String, Drawer> drawers = new HashMap<>();
    private final Map<String, String> others = new HashMap<>();
    private final List<String> remarks;

    SheetPlaces(View view, List<String> remarks) {
        this.remarks = remarks;
        for (Cabinet cabinet : view.all(Cabinet.class)) {
            cabinets.put(folded(cabinet.name()), cabinet);
            cabinets.put(folded(cabinet.id().replaceFirst("^c-", "")), cabinet);
            cabinets.put(folded(cabinet.id()), cabinet);
        }
        view.all(Drawer.class).forEach(this::know);
        for (Place place : view.all(Place.class)) {
            others.put(folded(place.name()), place.id());
            others.put(folded(place.id()), place.id());
        }
    }

    private void know(Drawer drawer) {
        drawers.put(folded(drawer.id()), drawer);
        drawers.put(spot(drawer.cabinet(), drawer.row(), drawer.column()), drawer);
    }

    /** A place that is no drawer: its number, by number or name. */
    Optional<String> other(String written) {
        return Optional.ofNullable(others.get(folded(written)));
    }

    /** The drawer meant; made, with its cabinet, where it is well named and new. */
    Drawer drawer(Writing writing, String field, String written) {
        Drawer known = drawers.get(folded(written));
        if (known != null) {
            return known;
        }
        Matcher spot = SPOT.matcher(written);
        Matcher nth = NTH.matcher(written);
        Optional<Drawer> labelled = inCabinet(spot) || inCabinet(nth) ? Optional.empty() : labelled(field, written);
        if (labelled.isPresent()) {
            return labelled.get();
        }
        if (spot.matches()) {
            return at(writing, field, written, spot.group(1), number(spot, 2), number(spot, 3));
        }
        if (nth.matches() && number(nth, 2) > 0) {
            Cabinet cabinet = cabinets.get(folded(nth.group(1)));
            int width = cabinet == null ? WIDTH : cabinet.columns();
            int before = number(nth, 2) - 1;
            return at(writing, field, written, nth.group(1), before / width + 1, before % width + 1);
        }
        throw new CellRefused(
                field, "“" + written + "” is no place of this shop: write it as B-4 or as a cabinet with r2c3");
    }

    private boolean inCabinet(Matcher written) {
        return written.matches() && cabinets.containsKey(folded(written.group(1)));
    }

    private Optional<Drawer> labelled(String field, String written) {
        List<Drawer> alike = drawers.values().stream()
                .filter(drawer ->
                        !written.isBlank() && folded(drawer.labelAsWritten()).equals(folded(written)))
                .distinct()
                .toList();
        if (alike.size() > 1) {
            throw new CellRefused(
                    field, "“" + written + "” is on " + alike.size() + " labels: write it as a cabinet with r2c3");
        }
        return alike.stream().findFirst();
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }

    private Drawer at(Writing writing, String field, String written, String cabinet, int row, int column) {
        if (row < 1 || column < 1 || row > MOST || column > MOST) {
            throw new CellRefused(field, "“" + written + "” is outside any cabinet: rows and columns are 1 to " + MOST);
        }
        Cabinet in = roomy(writing, cabinet.strip(), row, column);
        Drawer known = drawers.get(spot(in.id(), row, column));
        if (known != null) {
            return known;
        }
        Drawer made = new Drawer(
                "d-" + in.id().replaceFirst("^c-", "") + "-r" + row + "c" + column,
                in.id(),
                row,
                column,
                "",
                "",
                "",
                LabelState.NONE,
                null,
                "");
        writing.put(made);
        know(made);
        return made;
    }

    private Cabinet roomy(Writing writing, String name, int row, int column) {
        Cabinet cabinet = cabinets.get(folded(name));
        if (cabinet != null && row <= cabinet.rows() && column <= cabinet.columns()) {
            return cabinet;
        }
        Cabinet grown = cabinet == null
                ? new Cabinet(freeId(writing, name), name, row, Math.max(column, WIDTH), "", "")
                : new Cabinet(
                        cabinet.id(),
                        cabinet.name(),
                        Math.max(row, cabinet.rows()),
                        Math.max(column, cabinet.columns()),
                        cabinet.where(),
                        cabinet.notes());
        writing.put(grown);
        if (cabinet == null) {
            remarks.add("cabinet “" + name + "” was made, " + WIDTH + " drawers wide: tell its real shape in Drawers");
        }
        cabinets.replaceAll((key, value) -> value.id().equals(grown.id()) ? grown : value);
        cabinets.put(folded(name), grown);
        return grown;
    }

    private static String freeId(Writing writing, String name) {
        String plain = folded(name).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String id = "c-" + (plain.isEmpty() ? "x" : plain);
        for (int n = 2; writing.find(Cabinet.class, id).isPresent(); n++) {
            id = "c-" + plain + "-" + n;
        }
        return id;
    }

    /** What a row says of a drawer takes the place of what was known. */
    void put(Writing writing, Drawer drawer) {
        writing.put(drawer);
        know(drawer);
    }

    private static String spot(String cabinet, int row, int column) {
        return cabinet + " r" + row + "c" + column;
    }

    private static String folded(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
