package hornbook.catalogue.edit;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A place in an entry.
 *
 * @param steps names of fields, names in a list by name, and places in a list counted from 1
 */
public record Spot(List<String> steps) {
    /** The entry itself. */
    public static final Spot WHOLE = new Spot(List.of());

    /** Keeps its own copy. */
    public Spot {
        steps = List.copyOf(steps);
    }

    /** A place from the outermost field inwards. */
    public static Spot of(String... steps) {
        return new Spot(List.of(steps));
    }

    /** One step further in. */
    public Spot then(String step) {
        return new Spot(Stream.concat(steps.stream(), Stream.of(step)).toList());
    }

    /** A place in a list, counted from 1. */
    public Spot then(int place) {
        return then(Integer.toString(place));
    }

    /** What it lies in. */
    public Spot outer() {
        return new Spot(steps.subList(0, steps.size() - 1));
    }

    /** The innermost step; empty for the whole. */
    public String last() {
        return steps.isEmpty() ? "" : steps.getLast();
    }

    /** As problems name it: steps joined by dots. */
    public String dotted() {
        return steps.stream().collect(Collectors.joining("."));
    }
}
