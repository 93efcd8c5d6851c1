package hornbook.catalogue.entry;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Finds what a record read from a file lacks: a component that is null though its type does not allow it. */
final class Missing {
    private Missing() {}

    /** Path of the first such component, if there is one. */
    static Optional<String> firstIn(Record record) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            Optional<String> missing = in(component, value(component, record));
            if (missing.isPresent()) {
                return missing;
            }
        }
        return Optional.empty();
    }

    static Optional<String> firstIn(Entry entry) {
        return firstIn((Record) entry);
    }

    private static Optional<String> in(RecordComponent component, @Nullable Object value) {
        String name = snake(component.getName());
        if (value == null) {
            return component.getAnnotatedType().isAnnotationPresent(Nullable.class)
                    ? Optional.empty()
                    : Optional.of(name);
        }
        return below(value).map(inner -> name + "." + inner);
    }

    private static Optional<String> below(Object value) {
        return switch (value) {
            case Condition _ -> Optional.empty();
            case Record record -> firstIn(record);
            case List<?> list -> firstOf(list, true);
            case Map<?, ?> map -> firstOf(map.values(), false);
            default -> Optional.empty();
        };
    }

    private static Optional<String> firstOf(Collection<?> values, boolean numbered) {
        int n = 0;
        for (Object value : values) {
            n++;
            Optional<String> missing = below(value);
            if (missing.isPresent()) {
                return numbered ? Optional.of(n + "." + missing.get()) : missing;
            }
        }
        return Optional.empty();
    }

    private static @Nullable Object value(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("Cannot look into " + record.getClass(), e);
        }
    }

    private static String snake(String name) {
        return name.replaceAll("([A-Z])", "_$1").toLowerCase(java.util.Locale.ROOT);
    }
}
