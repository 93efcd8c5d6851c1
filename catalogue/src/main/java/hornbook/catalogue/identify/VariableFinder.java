package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Condition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/** Gathers what the statements of one condition turn on: a trait named twice is one thing, not two. */
final class VariableFinder {
    private final Map<String, Evidence> evidence;
    private final Map<String, List<Condition>> leaves = new LinkedHashMap<>();

    VariableFinder(Map<String, Evidence> evidence) {
        this.evidence = evidence;
    }

    void note(Condition leaf) {
        String key = key(leaf);
        if (key != null) {
            leaves.computeIfAbsent(key, _ -> new ArrayList<>()).add(leaf);
        }
    }

    private @Nullable String key(Condition leaf) {
        return switch (leaf) {
            case Condition.Is(var trait, var value) ->
                evidence.get(trait) instanceof ChoiceEvidence ? trait : trait + "=" + value;
            case Condition.Between between -> between.trait();
            default -> null;
        };
    }

    List<Variable> variables() {
        return leaves.values().stream().map(this::variable).toList();
    }

    Map<Condition, Integer> turnsOn() {
        Map<Condition, Integer> turnsOn = new LinkedHashMap<>();
        int v = 0;
        for (List<Condition> own : leaves.values()) {
            int at = v++;
            own.forEach(leaf -> turnsOn.put(leaf, at));
        }
        return turnsOn;
    }

    private Variable variable(List<Condition> own) {
        return switch (own.getFirst()) {
            case Condition.Is(var trait, var value) -> is(trait, value, own);
            case Condition.Between between ->
                evidence.get(between.trait()) instanceof MeasureEvidence measure
                        ? new MeasureVariable(measure, cuts(own))
                        : new MarkVariable(between.trait(), "");
            default -> throw new IllegalStateException("no statement about a trait: " + own);
        };
    }

    private Variable is(String trait, String value, List<Condition> own) {
        return switch (evidence.get(trait)) {
            case ChoiceEvidence choice -> new ValueVariable(choice, values(own));
            case PartsEvidence parts
            when parts.values().contains(value) ->
                new PartVariable(parts, parts.values().indexOf(value));
            case null, default -> new MarkVariable(trait, value);
        };
    }

    private static List<String> values(List<Condition> own) {
        return own.stream()
                .filter(Condition.Is.class::isInstance)
                .map(leaf -> ((Condition.Is) leaf).value())
                .distinct()
                .toList();
    }

    private static List<Double> cuts(List<Condition> own) {
        DoubleStream ends = own.stream()
                .filter(Condition.Between.class::isInstance)
                .map(Condition.Between.class::cast)
                .flatMapToDouble(b -> DoubleStream.of(b.low(), b.high()));
        return DoubleStream.concat(DoubleStream.of(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY), ends)
                .distinct()
                .sorted()
                .boxed()
                .toList();
    }
}
