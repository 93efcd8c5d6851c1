package hornbook.catalogue.diagnose;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Cause;
import hornbook.catalogue.entry.Fault;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The faults that a complaint may mean and their causes, with the odds that this shop's closed jobs make of them. Another
 * model's horns move what is told; the same model's then move that, each as one of a few.
 *
 * @param faults shares, which add up to 1
 * @param causes by id, with the fault they belong to
 * @param prior chance of each cause; what is missing to 1 is something else
 * @param jobs closed jobs that had the cause
 */
record Suspects(
        Map<String, Double> faults, Map<String, Suspect> causes, Map<String, Double> prior, Map<String, Integer> jobs) {
    /** How often it is none of the causes that are listed (from memory). */
    static final double SOMETHING_ELSE = 0.05;

    /** How many horns of the same model outweigh what the others say (from memory). */
    private static final double OTHERS_WORTH = 5;

    /** A cause and the fault it belongs to. */
    record Suspect(Fault fault, Cause cause) {
        /** The fault whose cure is that of the cause. */
        Fault cured(Catalogue catalogue) {
            return cause.fault() == null
                    ? fault
                    : Objects.requireNonNullElse(catalogue.faults().get(cause.fault()), fault);
        }
    }

    /**
     * The suspects.
     *
     * @param read what the words were read as
     * @param like closed jobs with such a complaint or finding
     */
    static Suspects of(Map<String, Double> read, List<ClosedJob> like, @Nullable String model, Catalogue catalogue) {
        Predicate<ClosedJob> same = job -> model != null && model.equals(job.model());
        Map<String, Suspect> causes = new LinkedHashMap<>();
        Map<String, Double> prior = new LinkedHashMap<>();
        Map<String, Integer> jobs = new HashMap<>();
        Fault first = fault(read.keySet().iterator().next(), catalogue);
        Map<String, Double> faults = moved(
                read,
                Learned.worth(first.provenance()),
                counted(read.keySet(), like, same.negate(), ClosedJob::found),
                counted(read.keySet(), like, same, ClosedJob::found));
        faults.forEach((id, share) -> {
            Fault fault = fault(id, catalogue);
            Map<String, Double> told = new LinkedHashMap<>();
            causes(fault).forEach(cause -> {
                causes.put(cause.id(), new Suspect(fault, cause));
                told.put(cause.id(), cause.share());
            });
            double sum = told.values().stream().mapToDouble(s -> s).sum();
            told.replaceAll((cause, s) -> s / sum);
            Found had = (job, cause) ->
                    job.had(Objects.requireNonNull(causes.get(cause)).cause());
            Map<String, Integer> others = counted(told.keySet(), like, same.negate(), had);
            Map<String, Integer> own = counted(told.keySet(), like, same, had);
            moved(told, Learned.worth(fault.provenance()), others, own)
                    .forEach((cause, s) -> prior.put(cause, (1 - SOMETHING_ELSE) * share * s));
            told.keySet().forEach(cause -> jobs.put(cause, others.getOrDefault(cause, 0) + own.getOrDefault(cause, 0)));
        });
        return new Suspects(faults, causes, prior, jobs);
    }

    private interface Found {
        boolean on(ClosedJob job, String id);
    }

    private static Map<String, Double> moved(
            Map<String, Double> told, double worth, Map<String, Integer> others, Map<String, Integer> same) {
        Map<String, Double> moved = Learned.shares(told, worth, others);
        return same.isEmpty() ? moved : Learned.shares(moved, OTHERS_WORTH, same);
    }

    private static Map<String, Integer> counted(
            Iterable<String> ids, List<ClosedJob> jobs, Predicate<ClosedJob> which, Found found) {
        Map<String, Integer> counts = new HashMap<>();
        for (String id : ids) {
            int n = (int)
                    jobs.stream().filter(which).filter(job -> found.on(job, id)).count();
            if (n > 0) {
                counts.put(id, n);
            }
        }
        return counts;
    }

    private static Fault fault(String id, Catalogue catalogue) {
        return Objects.requireNonNull(catalogue.faults().get(id));
    }

    /** Of a fault whose causes nobody wrote down its own check is the only one. */
    private static Stream<Cause> causes(Fault fault) {
        return fault.causes().isEmpty()
                ? Stream.of(new Cause(fault.id() + ".1", fault.title(), 1, fault.check(), 5, null, 0, null))
                : fault.causes().stream();
    }
}
