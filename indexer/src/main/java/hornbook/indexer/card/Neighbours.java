package hornbook.indexer.card;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Cause;
import hornbook.catalogue.entry.Condition;
import hornbook.catalogue.entry.Conditions;
import hornbook.catalogue.entry.Fault;
import hornbook.catalogue.entry.Quirk;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.entry.Tool;
import hornbook.catalogue.entry.Wanted;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which entries stand beside which, and how near: a quirk beside its look, its tools and parts; a fault beside its
 * quirks and what causes it. Who looks for one wants the others next.
 */
final class Neighbours {
    /** More would stand beside everything. */
    private static final int MOST = 16;

    private static final float ALIKE = 1.0f;
    private static final float BACK = 0.8f;

    private final Map<String, Map<String, Float>> beside = new HashMap<>();

    Neighbours(Catalogue catalogue) {
        catalogue.quirks().values().forEach(this::quirk);
        catalogue.faults().values().forEach(this::fault);
        catalogue.all(Tool.class).values().forEach(tool -> tool.serves().forEach(s -> both(s, tool.id(), 0.45f)));
        catalogue.all(Task.class).values().forEach(this::task);
    }

    private void quirk(Quirk quirk) {
        Conditions.leaves(quirk.when()).forEach(leaf -> {
            if (leaf instanceof Condition.Is(String trait, String _)) {
                both(quirk.id(), trait, 0.6f);
            }
        });
        wanted(quirk.id(), quirk.tools(), 0.5f);
        wanted(quirk.id(), quirk.parts(), 0.5f);
        wanted(quirk.id(), quirk.supplies(), 0.4f);
    }

    private void wanted(String by, List<Wanted> all, float share) {
        all.forEach(wanted -> both(by, wanted.id(), share));
    }

    private void fault(Fault fault) {
        fault.quirks().forEach(quirk -> both(fault.id(), quirk, 0.6f));
        for (Cause cause : fault.causes()) {
            if (cause.fault() != null) {
                both(fault.id(), cause.fault(), (float) cause.share());
            }
        }
    }

    private void task(Task task) {
        task.faults().forEach(fault -> both(task.id(), fault, 0.2f));
    }

    private void both(String one, String other, float share) {
        beside.computeIfAbsent(one, id -> new LinkedHashMap<>()).merge(other, share, Math::max);
        beside.computeIfAbsent(other, id -> new LinkedHashMap<>()).merge(one, share * BACK, Math::max);
    }

    /** What the same rare words stand on is near too, if less than what names it. */
    void like(Likeness likeness) {
        likeness.each((id, other, share) -> both(id, other, (float) (ALIKE * share)));
    }

    /** The nearest to an entry, nearest first. What stands beside many stands less close to each. */
    Map<String, Float> of(String id) {
        Map<String, Float> near = new LinkedHashMap<>();
        beside.getOrDefault(id, Map.of()).entrySet().stream()
                .map(e -> Map.entry(e.getKey(), e.getValue() * rarity(e.getKey())))
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .limit(MOST)
                .forEach(e -> near.put(e.getKey(), e.getValue()));
        return near;
    }

    private float rarity(String id) {
        int many = beside.getOrDefault(id, Map.of()).size();
        return 1 / (1 + (float) Math.log1p(many / 8.0));
    }
}
