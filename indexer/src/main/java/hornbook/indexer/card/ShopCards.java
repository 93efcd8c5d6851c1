package hornbook.indexer.card;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.PartUsed;
import hornbook.shared.shop.Place;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.shop.Supplier;
import hornbook.shared.shop.ToolMember;
import hornbook.shared.store.Books;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Makes the cards of a whole shop, knowledge and books, one after the other, or one again after a change. */
public final class ShopCards {
    private final Books books;
    private final Catalogue catalogue;
    private final LotCards lots;
    private final PlaceCards places;
    private final JobCards jobs;
    private @Nullable EntryCards entries;

    public ShopCards(Books books, Catalogue catalogue) {
        this.books = books;
        this.catalogue = catalogue;
        Names names = new Names(catalogue);
        lots = new LotCards(names);
        places = new PlaceCards(names);
        jobs = new JobCards(names);
    }

    /** Made when first asked for: an edit of the books needs none of it. */
    private EntryCards entries() {
        EntryCards known = entries;
        if (known == null) {
            known = new EntryCards(catalogue);
            entries = known;
        }
        return known;
    }

    /** Every card. Reads the books drawer by drawer and horn by horn, so that a large shop needs little memory. */
    public void each(Consumer<Card> to) {
        knowledge(to);
        books.all(Cabinet.class).forEach(cabinet -> to.accept(places.cabinet(cabinet)));
        books.all(Drawer.class).forEach(drawer -> drawer(drawer, to));
        books.all(Place.class).forEach(place -> place(place, to));
        books.all(Horn.class).forEach(horn -> horn(horn, to));
        books.all(Supplier.class).forEach(supplier -> to.accept(jobs.supplier(supplier)));
    }

    /** Cards of all entries, and of the shop's tools, which share theirs. */
    public void knowledge(Consumer<Card> to) {
        Set<String> had = new HashSet<>();
        for (ShopTool tool : books.all(ShopTool.class)) {
            had.add(tool.id());
            to.accept(tool(tool));
        }
        entries().all().stream().filter(card -> !had.contains(card.id())).forEach(to);
    }

    private void drawer(Drawer drawer, Consumer<Card> to) {
        Spot spot = spot(drawer);
        var inside = books.where(Lot.class, "drawer", drawer.id());
        to.accept(places.drawer(drawer, spot, inside, books.where(ShopTool.class, "drawer", drawer.id())));
        inside.forEach(lot -> to.accept(lots.card(lot, spot)));
    }

    private void place(Place place, Consumer<Card> to) {
        Spot spot = Spot.of(place);
        var there = books.where(Lot.class, "place", place.id());
        to.accept(places.place(place, spot, there, books.where(ShopTool.class, "place", place.id())));
        there.forEach(lot -> to.accept(lots.card(lot, spot)));
    }

    private void horn(Horn horn, Consumer<Card> to) {
        to.accept(jobs.horn(horn));
        books.where(Job.class, "horn", horn.id()).forEach(job -> to.accept(job(job, horn)));
    }

    /** The card of one record as it stands now; empty where there is none any more. */
    public Optional<Card> one(RecordKey key) {
        String id = key.id();
        return switch (key.kind()) {
            case CABINET -> books.find(Cabinet.class, id).map(places::cabinet);
            case DRAWER ->
                books.find(Drawer.class, id)
                        .map(drawer -> places.drawer(
                                drawer,
                                spot(drawer),
                                books.where(Lot.class, "drawer", id),
                                books.where(ShopTool.class, "drawer", id)));
            case PLACE ->
                books.find(Place.class, id)
                        .map(place -> places.place(
                                place,
                                Spot.of(place),
                                books.where(Lot.class, "place", id),
                                books.where(ShopTool.class, "place", id)));
            case LOT -> books.find(Lot.class, id).map(lot -> lots.card(lot, spot(lot.drawer(), lot.place())));
            case HORN -> books.find(Horn.class, id).map(jobs::horn);
            case JOB ->
                books.find(Job.class, id)
                        .map(job -> job(job, books.find(Horn.class, job.horn()).orElse(null)));
            case SUPPLIER -> books.find(Supplier.class, id).map(jobs::supplier);
            case ENTRY ->
                books.find(ShopTool.class, id)
                        .map(this::tool)
                        .or(() -> catalogue.entry(id).flatMap(entries()::draft).map(Draft::card));
        };
    }

    private Card job(Job job, @Nullable Horn horn) {
        return jobs.job(
                job, horn, books.where(Finding.class, "job", job.id()), books.where(PartUsed.class, "job", job.id()));
    }

    private Card tool(ShopTool tool) {
        Draft card = catalogue
                .entry(tool.id())
                .flatMap(entries()::draft)
                .orElseGet(() -> Card.draft("tool", tool.id(), tool.title()));
        var members = books.where(ToolMember.class, "set", tool.id());
        return new ToolCards()
                .add(card, tool, members, spot(tool.drawer(), tool.place()))
                .card();
    }

    private Spot spot(Drawer drawer) {
        return Spot.of(drawer, books.find(Cabinet.class, drawer.cabinet()).orElse(null));
    }

    private @Nullable Spot spot(@Nullable String drawer, @Nullable String place) {
        if (drawer != null) {
            return books.find(Drawer.class, drawer).map(this::spot).orElse(null);
        }
        return place == null
                ? null
                : books.find(Place.class, place).map(Spot::of).orElse(null);
    }
}
