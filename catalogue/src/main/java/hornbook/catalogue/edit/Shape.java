package hornbook.catalogue.edit;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a field holds, and so how it is asked for. */
public sealed interface Shape {
    /**
     * Words.
     *
     * @param names what they have to name, as {@link Naming} reads it; empty for free words
     */
    record Text(List<String> names) implements Shape {
        /** Keeps its own copy. */
        public Text {
            names = List.copyOf(names);
        }
    }

    /**
     * A number.
     *
     * @param whole whether it has no decimals
     * @param least null where it has no lower end
     * @param most null where it has no upper end
     */
    record Figure(
            boolean whole, @Nullable Double least, @Nullable Double most) implements Shape {}

    /** One of a few words. */
    record Choice(List<String> words) implements Shape {
        /** Keeps its own copy. */
        public Choice {
            words = List.copyOf(words);
        }
    }

    /** Yes or no. */
    record YesNo() implements Shape {}

    /** Several fields that belong together. */
    record Group(List<Field> fields) implements Shape {
        /** Keeps its own copy. */
        public Group {
            fields = List.copyOf(fields);
        }
    }

    /** Any number of the same, in order. */
    record ListOf(Shape each) implements Shape {}

    /**
     * Any number of the same, each under a name of its own.
     *
     * @param names what the names have to name, as {@link Naming} reads it; empty for free words
     */
    record ByName(List<String> names, Shape each) implements Shape {
        /** Keeps its own copy. */
        public ByName {
            names = List.copyOf(names);
        }
    }
}
