package hornbook.catalogue.diagnose;

import hornbook.catalogue.diagnose.DiagnoseAnswer.FoundLine;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Fault;
import hornbook.catalogue.entry.Model;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Says what may be wrong and what to look at next.
 *
 * <pre>{@code
 * new Diagnose(catalogue, books).answer(DiagnoseQuestion.of("low notes burble")).next().question();
 * }</pre>
 */
public final class Diagnose {
    private static final String OWN_FAULT_PREFIX = "f-";

    private final Catalogue catalogue;
    private final List<ClosedJob> closed;
    private final SymptomReader reader;
    private final Map<String, Set<String>> readBefore = new HashMap<>();

    public Diagnose(Catalogue catalogue, Books books) {
        this(catalogue, ClosedJob.of(books));
    }

    Diagnose(Catalogue catalogue, List<ClosedJob> closed) {
        this.catalogue = catalogue;
        this.closed = closed;
        this.reader = new SymptomReader(catalogue);
    }

    /**
     * What may be wrong. Words that are not understood give an answer without causes that names the nearest symptoms.
     *
     * @throws BadInput for no words, a model that is not known, or an answer to a check that is none of this symptom
     */
    public DiagnoseAnswer answer(DiagnoseQuestion question) {
        if (question.symptom().isBlank()) {
            throw new BadInput("no symptom was named: say what the player hears or feels, as “low notes burble”");
        }
        if (question.model() != null) {
            catalogue.named(Model.class, question.model());
        }
        Map<String, Double> read = reader.read(question.symptom());
        if (read.isEmpty()) {
            return Answering.notUnderstood(question.symptom(), reader.nearest(question.symptom()));
        }
        List<ClosedJob> like =
                closed.stream().filter(job -> isLike(job, read.keySet())).toList();
        Suspects suspects = Suspects.of(read, like, question.model(), catalogue);
        Map<String, Boolean> answers = new LinkedHashMap<>();
        question.answers()
                .forEach((check, yes) ->
                        answers.put(check(check, suspects.causes().keySet()), yes));
        Set<String> passed = question.passed().stream()
                .map(check -> check(check, suspects.causes().keySet()))
                .collect(Collectors.toSet());
        return new Answering(suspects, answers, passed, catalogue)
                .answer(question.symptom(), like.size(), foundOn(like), apart(question.symptom()));
    }

    private static String check(String typed, Set<String> checks) {
        if (checks.contains(typed)) {
            return typed;
        }
        if (checks.contains(OWN_FAULT_PREFIX + typed)) {
            return OWN_FAULT_PREFIX + typed;
        }
        throw new BadInput("“" + typed + "” is no check of this symptom: its checks are " + String.join(", ", checks));
    }

    /** Whether the owner complained of it, or it was found. */
    private boolean isLike(ClosedJob job, Set<String> faults) {
        Set<String> complained = readBefore.computeIfAbsent(
                job.complaint(), words -> reader.read(words).keySet());
        return faults.stream()
                .anyMatch(fault -> complained.contains(fault) || job.found(fault) || causeFound(job, fault));
    }

    /** Written down by its own id, a cause speaks of its fault; as the fault it is in its own right it need not. */
    private boolean causeFound(ClosedJob job, String fault) {
        Fault known = catalogue.faults().get(fault);
        return known != null && known.causes().stream().anyMatch(cause -> job.found(cause.id()));
    }

    private List<FoundLine> foundOn(List<ClosedJob> jobs) {
        Map<String, Long> counts = jobs.stream()
                .flatMap(job -> job.found().stream())
                .filter(catalogue.faults()::containsKey)
                .collect(Collectors.groupingBy(id -> id, Collectors.counting()));
        return counts.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
                .map(n -> new FoundLine(
                        n.getKey(), title(n.getKey()), n.getValue().intValue()))
                .toList();
    }

    private String title(String fault) {
        return catalogue.entry(fault).orElseThrow().title();
    }

    /** Complaints that stand side by side in the words, where they are read as different symptoms. */
    private List<String> apart(String symptom) {
        List<String> titles = List.of(symptom.split(",|;| and ")).stream()
                .map(reader::read)
                .filter(read -> !read.isEmpty())
                .map(read -> read.entrySet().stream()
                        .max(Comparator.comparingDouble(Map.Entry::getValue))
                        .orElseThrow()
                        .getKey())
                .distinct()
                .map(catalogue.faults()::get)
                .map(Fault::title)
                .toList();
        return titles.size() > 1 ? titles : List.of();
    }
}
