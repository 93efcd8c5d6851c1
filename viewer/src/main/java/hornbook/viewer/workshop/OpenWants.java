package hornbook.viewer.workshop;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Supply;
import hornbook.shared.pads.PadAnswer;
import hornbook.shared.pads.Pads;
import hornbook.shared.restock.RestockQuestion;
import hornbook.shared.restock.Wanted;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.PadUsed;
import hornbook.shared.store.Books;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** What open jobs want of the stock: here pads and restock meet, which do not know one another. */
final class OpenWants {
    private static final String CUP = "finding-cup-id";

    private final Books books;
    private final Catalogue catalogue;
    private final Pads pads;

    OpenWants(Books books, Catalogue catalogue, Pads pads) {
        this.books = books;
        this.catalogue = catalogue;
        this.pads = pads;
    }

    RestockQuestion question() {
        List<String> measured = measured();
        return new RestockQuestion(measured.isEmpty() ? List.of() : wanted(pads.forJobs(measured, false)), keeps());
    }

    /** Jobs whose cups were measured and that have no pad yet. */
    private List<String> measured() {
        return Stream.of(JobStatus.OPEN, JobStatus.WAITING)
                .flatMap(
                        status -> books.where(Job.class, "status", status.name().toLowerCase(Locale.ROOT)).stream())
                .map(Job::id)
                .filter(job -> books.where(Finding.class, "job", job).stream()
                        .anyMatch(f -> f.what().equals(CUP)))
                .filter(job -> books.where(PadUsed.class, "job", job).isEmpty())
                .toList();
    }

    private static List<Wanted> wanted(PadAnswer answer) {
        return Stream.concat(
                        answer.assignments().stream().map(a -> new Wanted(a.lot(), a.title(), null, 1, a.job())),
                        answer.shortages().stream().map(s -> new Wanted(s.lot(), s.what(), s.supplier(), 1, s.job())))
                .toList();
    }

    private Map<String, Integer> keeps() {
        Map<String, Integer> months = new HashMap<>();
        for (Supply supply : catalogue.all(Supply.class).values()) {
            Integer keeps = supply.shelfLifeMonths();
            if (keeps != null) {
                months.put(supply.id(), keeps);
            }
        }
        return months;
    }
}
