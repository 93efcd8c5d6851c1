package hornbook.catalogue.entry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The fields of one JSON object, asked for by name and type. What is asked for is known; what is left over when
 * the record is made is refused, so that a slip of the pen in a name is noticed.
 */
final class Fields {
    private final Map<String, Object> values;
    private final Set<String> known = new LinkedHashSet<>();

    Fields(Map<String, Object> values) {
        this.values = values;
    }

    /** Makes a record and refuses the fields that it did not ask for. */
    <T> T make(Function<Fields, T> record) {
        T made = record.apply(this);
        for (String name : values.keySet()) {
            if (!known.contains(name)) {
                String meant = Nearest.of(name, known)
                        .map(n -> "perhaps " + n + " is meant")
                        .orElse("take it out");
                throw new UnreadableEntry(name, "is not a field of this kind", meant);
            }
        }
        return made;
    }

    Set<String> names() {
        return values.keySet();
    }

    String text(String name) {
        return FieldValue.text(name, given(name));
    }

    @Nullable
    String optionalText(String name) {
        return has(name) ? text(name) : null;
    }

    double number(String name) {
        return FieldValue.number(name, given(name));
    }

    @Nullable
    Double optionalNumber(String name) {
        return has(name) ? (Double) number(name) : null;
    }

    int whole(String name) {
        return Math.toIntExact(FieldValue.whole(name, given(name), Integer.MAX_VALUE));
    }

    @Nullable
    Integer optionalWhole(String name) {
        return has(name) ? (Integer) whole(name) : null;
    }

    long serial(String name) {
        return FieldValue.whole(name, given(name), 999_999_999_999L);
    }

    boolean yes(String name) {
        return FieldValue.yes(name, given(name));
    }

    @Nullable
    Boolean optionalYes(String name) {
        return has(name) ? (Boolean) yes(name) : null;
    }

    Condition condition(String name) {
        return FieldValue.condition(name, given(name));
    }

    @Nullable
    Condition optionalCondition(String name) {
        return has(name) ? condition(name) : null;
    }

    <W extends Worded> W word(String name, W[] words) {
        return FieldValue.word(name, given(name), words);
    }

    <W extends Worded> List<W> words(String name, W[] words) {
        return elements(name, value -> FieldValue.word("", value, words));
    }

    List<String> texts(String name) {
        return elements(name, value -> FieldValue.text("", value));
    }

    <T> List<T> list(String name, Function<Fields, T> record) {
        return elements(name, value -> FieldValue.fields("", value).make(record));
    }

    <T> T one(String name, Function<Fields, T> record) {
        Fields inner = FieldValue.fields(name, given(name));
        return below(name, () -> inner.make(record));
    }

    <T> @Nullable T optional(String name, Function<Fields, T> record) {
        return has(name) ? one(name, record) : null;
    }

    Map<String, Double> numbers(String name) {
        return has(name) ? one(name, Fields::numbers) : Map.of();
    }

    Map<String, String> textByName(String name) {
        return has(name) ? one(name, in -> in.all(in::text)) : Map.of();
    }

    <T> Map<String, T> byName(String name, Function<Fields, T> record) {
        return has(name) ? one(name, in -> in.all(inner -> in.one(inner, record))) : Map.of();
    }

    /** All fields as numbers. */
    Map<String, Double> numbers() {
        return all(this::number);
    }

    private <T> Map<String, T> all(Function<String, T> read) {
        Map<String, T> all = new LinkedHashMap<>();
        for (String name : values.keySet()) {
            all.put(name, Objects.requireNonNull(read.apply(name)));
        }
        return all;
    }

    private <T> List<T> elements(String name, Function<Object, T> read) {
        if (!has(name)) {
            return List.of();
        }
        List<T> made = new ArrayList<>();
        for (Object element : FieldValue.list(name, given(name))) {
            String place = name + "." + (made.size() + 1);
            made.add(below(place, () -> read.apply(element)));
        }
        return made;
    }

    private boolean has(String name) {
        known.add(name);
        return values.containsKey(name);
    }

    private Object given(String name) {
        known.add(name);
        Object value = values.get(name);
        if (value == null) {
            Set<String> others = new LinkedHashSet<>(values.keySet());
            others.removeAll(known);
            String written = Nearest.of(name, others)
                    .map(n -> "add it; perhaps " + n + " is meant for it")
                    .orElse("add it");
            throw new UnreadableEntry(name, "is missing", written);
        }
        return value;
    }

    private static <T> T below(String place, java.util.function.Supplier<T> read) {
        try {
            return read.get();
        } catch (UnreadableEntry e) {
            throw e.below(place);
        }
    }
}
