package hornbook.shared.stock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Place;
import hornbook.shared.store.Books;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds a drawer or place by what a person calls it: its number, its label, or cabinet and spot. */
final class Places {
    private static final Pattern SPOT = Pattern.compile("(.+?)[ -]+r(\\d+)c(\\d+)", Pattern.CASE_INSENSITIVE);

    private final Books books;

    Places(Books books) {
        this.books = books;
    }

    /** The drawer meant, if any. @throws BadInput where several could be meant, naming them */
    Optional<Drawer> drawer(String called) {
        Optional<Drawer> byId = books.find(Drawer.class, called);
        return byId.isPresent() ? byId : bySpot(called).or(() -> byLabel(called));
    }

    /** The place meant, by its number or name. */
    Optional<Place> place(String called) {
        return books.find(Place.class, called)
                .or(() -> books.all(Place.class).stream()
                        .filter(place -> place.name().equalsIgnoreCase(called))
                        .findFirst());
    }

    /** Where something is to be put. @throws BadInput where there is no such drawer or place */
    Spot spot(String called) {
        return place(called)
                .map(Place::id)
                .map(id -> new Spot(id, null, id))
                .or(() -> drawer(called).map(Drawer::id).map(id -> new Spot(id, id, null)))
                .orElseThrow(() ->
                        new BadInput("there is no drawer or place “" + called + "”: look it up with “hornbook find”"));
    }

    private Optional<Drawer> bySpot(String called) {
        Matcher spot = SPOT.matcher(called.strip());
        if (!spot.matches()) {
            return Optional.empty();
        }
        String cabinet = spot.group(1);
        return books.all(Cabinet.class).stream()
                .filter(c -> c.id().equals(cabinet)
                        || c.id().equals("c-" + cabinet)
                        || c.name().equalsIgnoreCase(cabinet))
                .findFirst()
                .flatMap(c -> at(c.id(), Integer.parseInt(spot.group(2)), Integer.parseInt(spot.group(3))));
    }

    private Optional<Drawer> at(String cabinet, int row, int column) {
        return books.where(Drawer.class, "cabinet", cabinet).stream()
                .filter(d -> d.row() == row && d.column() == column)
                .findFirst();
    }

    private Optional<Drawer> byLabel(String called) {
        String wanted = folded(called);
        List<Drawer> exact = labelled(label -> label.equals(wanted));
        List<Drawer> found = exact.isEmpty() ? labelled(label -> label.contains(wanted)) : exact;
        if (found.size() > 1) {
            throw new BadInput(
                    "“" + called + "” is on " + found.size() + " labels: " + named(found) + "; name one by its number");
        }
        return found.stream().findFirst();
    }

    private List<Drawer> labelled(Predicate<String> label) {
        return books.all(Drawer.class).stream()
                .filter(drawer -> !drawer.labelAsWritten().isBlank())
                .filter(drawer -> label.test(folded(drawer.labelAsWritten())))
                .toList();
    }

    private static String folded(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    private static String named(List<Drawer> drawers) {
        String first = drawers.stream()
                .limit(5)
                .map(d -> d.id() + " (" + d.labelAsWritten() + ")")
                .collect(java.util.stream.Collectors.joining(", "));
        return drawers.size() > 5 ? first + " …" : first;
    }
}
