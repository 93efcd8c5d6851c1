package hornbook.catalogue.entry;

import java.util.List;

/** When a quirk applies: a tree over traits, models and makes. Read and written by {@link Conditions}. */
public sealed interface Condition {
    /** All of them hold. */
    record And(List<Condition> all) implements Condition {
        /** Keeps its own copy. */
        public And {
            all = List.copyOf(all);
        }
    }

    /** At least one of them holds. */
    record Or(List<Condition> any) implements Condition {
        /** Keeps its own copy. */
        public Or {
            any = List.copyOf(any);
        }
    }

    /** The trait has that value. */
    record Is(String trait, String value) implements Condition {}

    /** The number trait lies in the range, both ends included, in its unit. */
    record Between(String trait, double low, double high) implements Condition {}

    /** The horn is of that make, model, or pattern (the beginning its models share). */
    record Of(String id) implements Condition {}

    /** No condition. */
    record Always() implements Condition {}

    /** The parts directly below this one. */
    default List<Condition> parts() {
        return switch (this) {
            case And and -> and.all();
            case Or or -> or.any();
            default -> List.of();
        };
    }
}
