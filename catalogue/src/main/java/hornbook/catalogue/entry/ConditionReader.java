package hornbook.catalogue.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one condition, by descent: or, and, bracket or statement. */
final class ConditionReader {
    private static final Pattern RANGE = Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\.\\.(-?\\d+(?:\\.\\d+)?)");
    private static final int DEEPEST = 50;

    private final String text;
    private int at;
    private int depth;

    ConditionReader(String text) {
        this.text = text;
    }

    Condition whole() {
        Condition condition = joined('|', this::and, Condition.Or::new);
        if (at < text.length()) {
            throw wrong("nothing more was expected");
        }
        return condition;
    }

    private Condition and() {
        return joined('&', this::one, Condition.And::new);
    }

    private Condition joined(char sign, Supplier<Condition> part, Function<List<Condition>, Condition> join) {
        List<Condition> parts = new ArrayList<>(List.of(part.get()));
        while (next() == sign) {
            at++;
            parts.add(part.get());
        }
        return parts.size() == 1 ? parts.getFirst() : join.apply(parts);
    }

    private Condition one() {
        if (next() != '(') {
            return statement(word());
        }
        if (++depth > DEEPEST) {
            throw wrong("too many brackets inside each other");
        }
        at++;
        Condition inner = joined('|', this::and, Condition.Or::new);
        if (next() != ')') {
            throw wrong("a closing bracket is missing");
        }
        at++;
        depth--;
        return inner;
    }

    private Condition statement(String word) {
        if (word.equals("always")) {
            return new Condition.Always();
        }
        int equals = word.indexOf('=');
        if (equals < 1 || equals == word.length() - 1) {
            throw wrong("trait=value, trait=low..high or always was expected, not '" + word + "'");
        }
        String name = word.substring(0, equals);
        String value = word.substring(equals + 1);
        Matcher range = RANGE.matcher(value);
        if (range.matches()) {
            return between(name, Double.parseDouble(range.group(1)), Double.parseDouble(range.group(2)));
        }
        boolean horn = name.equals("model") || name.equals("make");
        return horn ? new Condition.Of(value) : new Condition.Is(name, value);
    }

    private Condition between(String trait, double low, double high) {
        if (low > high) {
            throw wrong("the range of " + trait + " runs from high to low");
        }
        return new Condition.Between(trait, low, high);
    }

    private String word() {
        next();
        int from = at;
        while (at < text.length() && " \t\r\n&|()".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return text.substring(from, at);
    }

    private char next() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private IllegalArgumentException wrong(String why) {
        return new IllegalArgumentException("condition, at letter " + (at + 1) + ": " + why);
    }
}
