package hornbook.shared.stock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.store.Books;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Answers which drawers want to be looked through, and in which order one walks. */
public final class LookThrough {
    private static final List<LabelState> WORST_FIRST = List.of(LabelState.DRIFTED, LabelState.NONE, LabelState.RIGHT);

    private static final Comparator<Drawer> WALK =
            Comparator.comparing(Drawer::cabinet).thenComparingInt(Drawer::row).thenComparingInt(Drawer::column);

    private final Books books;
    private final Stock stock;

    public LookThrough(Books books) {
        this.books = books;
        this.stock = new Stock(books);
    }

    /**
     * Drawers whose label is wrong or missing, and those not seen for long, which come last, the longest unseen first.
     *
     * @param cabinet its number or name, empty for all
     * @throws BadInput where there is no such cabinet
     */
    public List<DrawerCard> due(String cabinet) {
        if (!cabinet.isEmpty() && books.all(Drawer.class).stream().noneMatch(drawer -> in(drawer, cabinet))) {
            throw new BadInput("there is no cabinet “" + cabinet + "”: “hornbook cabinet” lists them");
        }
        return books.all(Drawer.class).stream()
                .filter(drawer -> cabinet.isEmpty() || in(drawer, cabinet))
                .filter(drawer -> Stock.heed(drawer, books.today()) != null)
                .sorted(Comparator.comparingInt((Drawer drawer) -> WORST_FIRST.indexOf(drawer.labelState()))
                        .thenComparing(Drawer::lastLookedThrough, Comparator.nullsFirst(Comparator.naturalOrder()))
                        .thenComparing(WALK))
                .flatMap(drawer -> stock.drawer(drawer.id()).stream())
                .toList();
    }

    private boolean in(Drawer drawer, String cabinet) {
        return drawer.cabinet().equals(cabinet)
                || drawer.cabinet().equals("c-" + cabinet)
                || books.find(Cabinet.class, drawer.cabinet())
                        .filter(c -> c.name().equalsIgnoreCase(cabinet))
                        .isPresent();
    }

    /** Number of the drawer that comes after one in the walk through its cabinet, row by row. */
    public Optional<String> after(String drawer) {
        Optional<Drawer> here = books.find(Drawer.class, drawer);
        return here.flatMap(from -> books.where(Drawer.class, "cabinet", from.cabinet()).stream()
                .filter(other -> WALK.compare(other, from) > 0)
                .min(WALK)
                .map(Drawer::id));
    }
}
