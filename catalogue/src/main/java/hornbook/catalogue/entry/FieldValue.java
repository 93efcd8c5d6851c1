package hornbook.catalogue.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Takes one JSON value for what it ought to be, or says what it ought to be. */
final class FieldValue {
    private FieldValue() {}

    static String text(String name, Object value) {
        if (value instanceof String text) {
            return text;
        }
        throw new UnreadableEntry(name, "must be text", "put it between quotation marks");
    }

    static double number(String name, Object value) {
        if (value instanceof Number number && Double.isFinite(number.doubleValue())) {
            return number.doubleValue();
        }
        throw new UnreadableEntry(name, "must be a number", "write it in digits, without quotation marks");
    }

    static long whole(String name, Object value, long most) {
        if (value instanceof Long number && Math.abs(number) <= most) {
            return number;
        }
        throw new UnreadableEntry(name, "must be a whole number, at most " + most, "write it without a decimal point");
    }

    static boolean yes(String name, Object value) {
        if (value instanceof Boolean yes) {
            return yes;
        }
        throw new UnreadableEntry(name, "must be true or false", "write true or false");
    }

    static <W extends Worded> W word(String name, Object value, W[] words) {
        String text = text(name, value);
        return Arrays.stream(words)
                .filter(w -> w.word().equals(text))
                .findFirst()
                .orElseThrow(() -> {
                    List<String> known = Arrays.stream(words).map(Worded::word).toList();
                    String meant = Nearest.of(text, known)
                            .map(n -> "perhaps " + n + " is meant")
                            .orElse("choose one of these");
                    return new UnreadableEntry(name, "'" + text + "' is not one of " + String.join(", ", known), meant);
                });
    }

    static Condition condition(String name, Object value) {
        try {
            return Conditions.read(text(name, value));
        } catch (IllegalArgumentException e) {
            String why = Objects.toString(e.getMessage(), "is not a condition");
            throw new UnreadableEntry(name, why, "write trait=value, trait=low..high or always, joined by & and |");
        }
    }

    static List<?> list(String name, Object value) {
        if (value instanceof List<?> list) {
            return list;
        }
        throw new UnreadableEntry(name, "must be a list", "put it between [ and ]");
    }

    @SuppressWarnings("unchecked") // the parser makes no other maps
    static Fields fields(String name, Object value) {
        if (value instanceof Map<?, ?> map) {
            return new Fields((Map<String, Object>) map);
        }
        throw new UnreadableEntry(name, "must be an object", "put its fields between { and }");
    }
}
