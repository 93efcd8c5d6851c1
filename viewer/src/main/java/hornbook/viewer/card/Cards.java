package hornbook.viewer.card;

import java.util.Optional;

/** Opens a record as a card: the shop's own from the books, knowledge from the catalogue. */
public final class Cards {
    private final PlaceCards places;
    private final JobCards jobs;
    private final EntryCards entries;

    public Cards(PlaceCards places, JobCards jobs, EntryCards entries) {
        this.places = places;
        this.jobs = jobs;
        this.entries = entries;
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
