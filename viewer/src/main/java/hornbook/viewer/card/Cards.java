package hornbook.viewer.card;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.job.Jobs;
import hornbook.shared.stock.Furniture;
import hornbook.shared.stock.Stock;
import java.util.Optional;
import java.util.function.Supplier;

/** Opens a record as a card: the shop's own from the books, knowledge from the catalogue. */
public final class Cards {
    private final PlaceCards places;
    private final JobCards jobs;
    private final EntryCards entries;

    /** @param catalogue asked each time, as the shop's own entries may have changed */
    public Cards(Stock stock, Furniture furniture, Jobs jobs, Supplier<Catalogue> catalogue) {
        this.entries = new EntryCards(catalogue);
        this.places = new PlaceCards(stock, furniture, entries::title);
        this.jobs = new JobCards(jobs, entries::title);
    }

    /**
     * The card of a record.
     *
     * @param kind as {@code find} names it
     */
    public Optional<Card> card(String kind, String id) {
        return switch (kind) {
            case "lot" -> places.lot(id);
            case "place", "drawer" -> places.place(id);
            case "cabinet" -> places.cabinet(id);
            case "job" -> jobs.job(id);
            case "horn" -> jobs.horn(id);
            case "tool" -> places.tool(id, entries.card(id));
            default -> entries.card(id);
        };
    }
}
