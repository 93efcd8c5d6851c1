package hornbook.shared.stock;

import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.Place;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.store.Books;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Answers what lies where. */
public final class Stock {
    /** After two years unseen a drawer is unsure (common practice). */
    private static final int UNSURE_AFTER_YEARS = 2;

    private static final int LEDGER_LINES = 12;

    /** What the code on a label says before the drawer's number. */
    private static final String SCANNED = "hornbook:";

    private final Books books;
    private final Places places;

    public Stock(Books books) {
        this.books = books;
        this.places = new Places(books);
    }

    /**
     * The drawer or place that a person means.
     *
     * @param called its number, its label (whole or a part of it), a place's name, {@code cabinet r2c3}, or what a
     *     reader makes of its printed code
     * @throws hornbook.shared.shop.BadInput where several could be meant
     */
    public Optional<DrawerCard> drawer(String called) {
        String name = called.startsWith(SCANNED) ? called.substring(SCANNED.length()) : called;
        Optional<Place> place = places.place(name);
        return place.isPresent() ? place.map(this::card) : places.drawer(name).map(this::card);
    }

    /** The drawer or place where a tool of the shop lies. */
    public Optional<DrawerCard> placeOfTool(String id) {
        return books.find(ShopTool.class, id)
                .map(tool -> tool.drawer() != null ? tool.drawer() : tool.place())
                .flatMap(this::drawer);
    }

    /** The lot of that number. */
    public Optional<LotCard> lot(String id) {
        return books.find(Lot.class, id).map(this::card);
    }

    private DrawerCard card(Drawer drawer) {
        List<LotLine> lots = lots("drawer", drawer.id());
        List<ToolLine> tools = tools("drawer", drawer.id());
        return new DrawerCard(
                drawer.id(),
                where(drawer),
                drawer.labelAsWritten(),
                drawer.contentsAsFound(),
                drawer.labelState().name().toLowerCase(Locale.ROOT),
                drawer.lastLookedThrough(),
                drawer.note(),
                heed(drawer, books.today()),
                lots,
                tools,
                retired(drawer.id()));
    }

    private DrawerCard card(Place place) {
        return new DrawerCard(
                place.id(),
                place.where(),
                place.name(),
                place.kind(),
                null,
                null,
                place.note(),
                null,
                lots("place", place.id()),
                tools("place", place.id()),
                retired(place.id()));
    }

    private List<LotLine> lots(String column, String id) {
        return books.where(Lot.class, column, id).stream().map(LotLine::of).toList();
    }

    private List<ToolLine> tools(String column, String id) {
        return books.where(ShopTool.class, column, id).stream()
                .map(ToolLine::of)
                .toList();
    }

    private String where(Drawer drawer) {
        String cabinet =
                books.find(Cabinet.class, drawer.cabinet()).map(Cabinet::name).orElse(drawer.cabinet());
        return cabinet + ", row " + drawer.row() + ", column " + drawer.column();
    }

    static @Nullable String heed(Drawer drawer, LocalDate today) {
        if (drawer.labelState() == LabelState.DRIFTED) {
            return "the label does not say what is in it: put it right";
        }
        if (drawer.labelState() == LabelState.NONE) {
            return "has no label: write one";
        }
        if (drawer.lastLookedThrough() == null) {
            return "never looked through: look before you trust it";
        }
        return unsure(drawer, today)
                ? "not looked through for " + UNSURE_AFTER_YEARS + " years: look before you trust it"
                : null;
    }

    static boolean unsure(Drawer drawer, LocalDate today) {
        LocalDate seen = drawer.lastLookedThrough();
        return seen == null || seen.plusYears(UNSURE_AFTER_YEARS).isBefore(today);
    }

    private List<LotLine> retired(String drawerOrPlace) {
        return Stream.of("drawer", "place")
                .flatMap(column -> books.retired(Lot.class, column, drawerOrPlace).stream())
                .map(LotLine::of)
                .toList();
    }

    private LotCard card(Lot lot) {
        Optional<Drawer> drawer = Optional.ofNullable(lot.drawer()).flatMap(id -> books.find(Drawer.class, id));
        Optional<Place> place = Optional.ofNullable(lot.place()).flatMap(id -> books.find(Place.class, id));
        return new LotCard(
                lot.id(),
                lot.title(),
                lot.item(),
                lot.lies(),
                drawer.map(Drawer::labelAsWritten)
                        .or(() -> place.map(Place::name))
                        .orElse(""),
                drawer.map(this::where).or(() -> place.map(Place::where)).orElse(""),
                lot.count().written(),
                lot.dimensions(),
                lot.thread(),
                lot.material(),
                lot.colour(),
                lot.state().name().toLowerCase(Locale.ROOT),
                lot.fitsMakes(),
                lot.fitsModels(),
                LotLine.heed(lot),
                lot.supplier(),
                lot.pack(),
                lot.note(),
                ledger(lot.id()));
    }

    private List<LotCard.Line> ledger(String lot) {
        return books.where(Movement.class, "lot", lot).stream()
                .sorted(Comparator.comparing(Movement::date).reversed())
                .limit(LEDGER_LINES)
                .map(m -> new LotCard.Line(
                        m.date(), m.kind().name().toLowerCase(Locale.ROOT), m.qty(), m.job(), m.note()))
                .toList();
    }
}
