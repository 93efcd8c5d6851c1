package hornbook.catalogue.hornmap;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Cup;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Model;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.store.Books;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Answers what is known of a horn, cup by cup: what was read on it, else what its model has, beside what is usual. */
public final class HornMaps {
    private final Catalogue catalogue;
    private final Books books;
    private final SizeReader sizes;

    public HornMaps(Catalogue catalogue, Books books, SizeReader sizes) {
        this.catalogue = catalogue;
        this.books = books;
        this.sizes = sizes;
    }

    /** The map of a horn of the shop. */
    public Optional<HornMap> horn(String id) {
        return books.find(Horn.class, id).map(this::map);
    }

    /** The map of the horn of a job. */
    public Optional<HornMap> job(String id) {
        return books.find(Job.class, id).flatMap(job -> horn(job.horn()));
    }

    /**
     * The map of a horn in hand as one of that model: what was read on it, else what the model has.
     *
     * @param horn its number, null where the books do not have it
     * @return empty where no such model is known
     */
    public Optional<HornMap> as(@Nullable String horn, String model) {
        Optional<Horn> known = Optional.ofNullable(horn).flatMap(id -> books.find(Horn.class, id));
        return Optional.ofNullable(catalogue.models().get(model))
                .map(as -> map(
                        known.map(Horn::id).orElse(""),
                        as.title(),
                        known.map(Horn::instrument).orElse(as.instruments().getFirst()),
                        as));
    }

    private HornMap map(Horn horn) {
        Model model = catalogue.models().get(horn.model());
        return map(horn.id(), title(horn, model), horn.instrument(), model);
    }

    private HornMap map(String horn, String title, String instrument, @Nullable Model model) {
        HornReadings readings = new HornReadings(books, horn, sizes);
        CupLines lines = new CupLines(catalogue, readings, model, instrument);
        return new HornMap(horn, title, instrument, openJob(horn), lines.of(cups(instrument, model, readings)));
    }

    /** Those its model has pads for, else those its instrument can have; and any that something was read at. */
    private List<Cup> cups(String instrument, @Nullable Model model, HornReadings readings) {
        Set<String> ofModel = model == null ? Set.of() : model.padSet().keySet();
        return catalogue.cups().values().stream()
                .filter(cup -> readings.touched(cup.id())
                        || (ofModel.isEmpty() ? usual(cup, instrument) : ofModel.contains(cup.id())))
                .toList();
    }

    private boolean usual(Cup cup, String instrument) {
        return cup.heights().containsKey(instrument) || cup.pads().containsKey(instrument) || !knows(instrument);
    }

    /** Of a rare member of the family nothing is known: then every cup may be there. */
    private boolean knows(String instrument) {
        return catalogue.cups().values().stream().anyMatch(cup -> cup.heights().containsKey(instrument));
    }

    private String title(Horn horn, @Nullable Model model) {
        String what = model == null ? horn.instrument() + ", not placed" : model.title();
        String sold = horn.soldAs() == null || horn.soldAs().isBlank()
                ? ""
                : ", sold as "
                        + catalogue.entry(horn.soldAs()).map(Entry::title).orElse(horn.soldAs());
        return what + sold + (horn.serial().isBlank() ? "" : ", " + horn.serial());
    }

    private @Nullable String openJob(String horn) {
        return books.where(Job.class, "horn", horn).stream()
                .filter(job -> job.status().onBench())
                .map(Job::id)
                .reduce((before, after) -> after)
                .orElse(null);
    }
}
