package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Provenance;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.store.Books;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Gathers from the books what horns taught. */
final class ExperienceReader {
    private final Catalogue catalogue;
    private final FindingLooks reader;
    private final Map<String, Job> jobs;
    private final List<Horn> horns;
    private final Map<String, List<Finding>> findings;

    ExperienceReader(Catalogue catalogue, Books books) {
        this.catalogue = catalogue;
        this.reader = new FindingLooks(catalogue, books);
        this.jobs = books.all(Job.class).stream().collect(Collectors.toMap(Job::id, j -> j));
        this.horns = books.all(Horn.class);
        this.findings = books.all(Finding.class).stream().collect(Collectors.groupingBy(Finding::horn));
    }

    Experience read() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        horns.forEach(h -> counts.merge(h.model(), 1, Integer::sum));
        int unplaced = Objects.requireNonNullElse(counts.remove(Experience.UNLISTED), 0);
        Map<String, List<Seen>> looks = new LinkedHashMap<>();
        horns.forEach(h -> looks.put(h.id(), reader.looks(findings.getOrDefault(h.id(), List.of()))));
        List<Horn> confirmed = horns.stream().filter(this::confirmed).toList();
        return new Experience(
                counts,
                unplaced,
                looks,
                confirmed.stream().filter(this::later).toList(),
                confirmed.stream().filter(Confirmation::independent).toList());
    }

    private boolean confirmed(Horn horn) {
        return Confirmation.sure(horn) && catalogue.models().containsKey(horn.model());
    }

    /** Whether the horn came after those that its entry already holds. */
    private boolean later(Horn horn) {
        Model model = Objects.requireNonNull(catalogue.models().get(horn.model()));
        Provenance source = model.provenance();
        if (source.basis() != Provenance.Basis.THIS_SHOP) {
            return true;
        }
        Optional<LocalDate> held = source.jobs().stream()
                .map(jobs::get)
                .filter(Objects::nonNull)
                .map(Job::tookIn)
                .max(Comparator.naturalOrder());
        return held.isEmpty() || firstSeen(horn).map(d -> d.isAfter(held.get())).orElse(false);
    }

    private Optional<LocalDate> firstSeen(Horn horn) {
        List<LocalDate> days = new ArrayList<>();
        for (Job job : jobs.values()) {
            if (job.horn().equals(horn.id())) {
                days.add(job.tookIn());
            }
        }
        return days.stream().min(Comparator.naturalOrder());
    }
}
