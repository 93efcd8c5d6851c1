package hornbook.indexer.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.MadeBy;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Seller;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Books;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Jobs on horns that are kin to the one in hand. */
final class PastJobs {
    private static final int MOST = 12;
    private static final int MEASURED = 8;

    private final Books books;
    private final Catalogue catalogue;
    private final Likely likely;
    private final @Nullable String horn;
    private final List<MadeBy> sold;

    /** @param seller the name it was sold under, where that is known */
    PastJobs(Books books, Catalogue catalogue, Likely likely, @Nullable String horn, @Nullable Seller seller) {
        this.books = books;
        this.catalogue = catalogue;
        this.likely = likely;
        this.horn = horn;
        this.sold = seller == null ? List.of() : seller.madeBy();
    }

    private record Found(Job job, Horn horn, Kin kin) {}

    List<PastJob> list() {
        Map<String, Horn> horns = books.all(Horn.class).stream().collect(Collectors.toMap(Horn::id, h -> h));
        return books.all(Job.class).stream()
                .filter(j -> j.status() == JobStatus.DONE)
                .flatMap(j -> found(j, horns.get(j.horn())).stream())
                .sorted(Comparator.comparing(Found::kin)
                        .thenComparing(f -> f.job().tookIn(), Comparator.reverseOrder())
                        .thenComparing(f -> f.job().id()))
                .limit(MOST)
                .map(this::past)
                .toList();
    }

    private Optional<Found> found(Job job, @Nullable Horn of) {
        return of == null ? Optional.empty() : kin(of).map(kin -> new Found(job, of, kin));
    }

    private Optional<Kin> kin(Horn other) {
        if (other.id().equals(horn)) {
            return Optional.of(Kin.THIS_HORN);
        }
        Model model = catalogue.models().get(other.model());
        if (model == null) {
            return Optional.empty();
        }
        if (likely.counts(model)) {
            return Optional.of(Kin.MODEL);
        }
        if (likely.models().keySet().stream().anyMatch(m -> likely.counts(m) && samePattern(m, model))) {
            return Optional.of(Kin.PATTERN);
        }
        if (sold.stream().anyMatch(made -> made.covers(model.id()))) {
            return Optional.of(Kin.SELLER);
        }
        return likely.makeCounts(model.make()) ? Optional.of(Kin.MAKE) : Optional.empty();
    }

    static boolean samePattern(Model one, Model other) {
        return one.make().equals(other.make()) && one.pattern().equals(other.pattern());
    }

    private PastJob past(Found found) {
        Job job = found.job();
        return new PastJob(
                job.id(),
                job.tookIn(),
                found.horn().id(),
                found.horn().model(),
                found.kin(),
                job.kind(),
                job.complaint(),
                job.went() == null ? null : job.went().name().toLowerCase(Locale.ROOT),
                job.wentNote(),
                minutes(job),
                job.quotedMin(),
                measured(job),
                job.quirksMet());
    }

    private @Nullable Integer minutes(Job job) {
        if (job.minutesTotal() != null) {
            return job.minutesTotal();
        }
        int clocked = books.where(TaskTime.class, "job", job.id()).stream()
                .mapToInt(TaskTime::minutes)
                .sum();
        return clocked > 0 ? clocked : null;
    }

    private List<String> measured(Job job) {
        return books.where(Finding.class, "job", job.id()).stream()
                .filter(f -> !f.unit().isEmpty())
                .limit(MEASURED)
                .map(f -> f.what().replaceFirst("^finding-", "") + (f.where().isEmpty() ? "" : " " + f.where()) + " "
                        + f.value() + " " + f.unit() + (f.asFoundOrLeft().equals("left") ? " as left" : ""))
                .toList();
    }
}
