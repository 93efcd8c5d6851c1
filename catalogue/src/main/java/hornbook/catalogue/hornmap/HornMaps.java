package hornbook.catalogue.hornmap;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Cup;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Model;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.store.Books;
import java.util.List;
import java.util.Optional;
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

    private HornMap map(Horn horn) {
        Model model = catalogue.models().get(horn.model());
        CupLines lines = new CupLines(catalogue, new HornReadings(books, horn.id(), sizes), model, horn.instrument());
        return new HornMap(
                horn.id(), title(horn, model), horn.instrument(), openJob(horn.id()), lines.of(cups(horn, model)));
    }

    private List<Cup> cups(Horn horn, @Nullable Model model) {
        return catalogue.cups().values().stream()
                .filter(cup -> cup.heights().containsKey(horn.instrument())
                        || cup.pads().containsKey(horn.instrument())
                        || (model != null && model.padSet().containsKey(cup.id()))
                        || !knows(horn.instrument()))
                .toList();
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
                .filter(job -> job.status() == JobStatus.OPEN || job.status() == JobStatus.WAITING)
                .map(Job::id)
                .reduce((before, after) -> after)
                .orElse(null);
    }
}
