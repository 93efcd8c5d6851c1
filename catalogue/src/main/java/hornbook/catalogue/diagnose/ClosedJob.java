package hornbook.catalogue.diagnose;

import hornbook.catalogue.entry.Cause;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.store.Books;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A job that is done.
 *
 * @param found ids of what was found on it: faults, causes and whatever else
 * @param model null where not known
 */
record ClosedJob(
        String complaint, Set<String> found, @Nullable String model) {
    private static final Set<String> NOT_THERE = Set.of("no", "none", "absent");

    /** Whether that was found on it. */
    boolean found(String id) {
        return found.contains(id);
    }

    /** Whether a cause was found on it, by its own id or as the fault it is in its own right. */
    boolean had(Cause cause) {
        return found.contains(cause.id()) || cause.fault() != null && found.contains(cause.fault());
    }

    static List<ClosedJob> of(Books books) {
        return books.reading(view -> {
            Map<String, String> models = new HashMap<>();
            view.all(Horn.class).forEach(horn -> models.put(horn.id(), horn.model()));
            Map<String, Set<String>> found = view.all(Finding.class).stream()
                    .filter(f -> !f.asFoundOrLeft().equals("left") && !NOT_THERE.contains(f.value()))
                    .collect(
                            Collectors.groupingBy(Finding::job, Collectors.mapping(Finding::what, Collectors.toSet())));
            return view.all(Job.class).stream()
                    .filter(job -> job.status() == JobStatus.DONE)
                    .filter(job -> job.done() == null || !job.done().isAfter(view.today()))
                    .map(job -> new ClosedJob(
                            job.complaint(), found.getOrDefault(job.id(), Set.of()), models.get(job.horn())))
                    .toList();
        });
    }
}
