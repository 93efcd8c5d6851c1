package hornbook.catalogue.identify;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.store.Books;
import hornbook.shared.store.Writing;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes looks into the books as findings of a job, those that are not there yet. */
final class LooksWritten {
    private static final int DECIMALS = 4;

    private final Books books;
    private final Horn horn;
    private final List<Seen> fresh;

    /** @param known what the books hold of the horn */
    LooksWritten(Books books, Horn horn, List<Seen> known, List<Seen> looks) {
        this.books = books;
        this.horn = horn;
        Set<String> held = known.stream().map(Seen::written).collect(Collectors.toSet());
        held.add(Cases.MEMBER + "=" + horn.instrument());
        this.fresh = looks.stream()
                .filter(seen -> !(seen instanceof Seen.CannotTell))
                .filter(seen -> !held.contains(seen.written()))
                .toList();
    }

    /** On that job, or on the horn's newest, one that is open before one that is done. */
    void into(Writing w, @Nullable String told) {
        if (!fresh.isEmpty()) {
            Job job = job(told);
            fresh.forEach(seen -> w.put(finding(w, job, seen)));
        }
    }

    private Job job(@Nullable String told) {
        return books.where(Job.class, "horn", horn.id()).stream()
                .filter(j -> told == null || j.id().equals(told))
                .max(Comparator.comparing((Job j) -> j.status().onBench()).thenComparing(Job::tookIn))
                .orElseThrow(() -> new BadInput(
                        told == null
                                ? "horn " + horn.id() + " has no job on which to write the looks: take it in first"
                                : "job “" + told + "” is no job of horn " + horn.id() + ": “hornbook horn show "
                                        + horn.id() + "” lists its jobs"));
    }

    private Finding finding(Writing w, Job job, Seen seen) {
        boolean measured = seen instanceof Seen.Measured;
        return new Finding(
                w.nextId(Finding.class),
                job.id(),
                horn.id(),
                books.today(),
                seen.trait(),
                "",
                seen instanceof Seen.Measured(String _, double mm, double _) ? plain(mm) : seen.value(),
                measured ? "mm" : "",
                "found",
                null,
                "");
    }

    private static String plain(double mm) {
        return BigDecimal.valueOf(mm)
                .setScale(DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
