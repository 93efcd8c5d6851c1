package hornbook.viewer.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import tools.jackson.databind.JsonNode;

/** A closed group in a line. */
final class Summary {
    private static final int LONGEST = 120;

    private final UnaryOperator<String> called;

    /** @param called what a person calls what is named by its id; blank where it is no id */
    Summary(UnaryOperator<String> called) {
        this.called = called;
    }

    String of(JsonNode node) {
        String words = words(node);
        return words.length() <= LONGEST
                ? words
                : words.substring(0, LONGEST - 1).strip() + "\u2026";
    }

    private String words(JsonNode node) {
        if (node.isObject()) {
            List<String> parts = new ArrayList<>();
            node.properties().forEach(p -> parts.add(part(p.getKey(), p.getValue())));
            return String.join(", ", parts);
        }
        if (node.isArray()) {
            return String.join(", ", node.valueStream().map(this::words).toList());
        }
        String written = Figures.written(node);
        String title = node.isString() ? called.apply(written) : "";
        return title.isBlank() ? written : title;
    }

    /** Words speak for themselves, numbers do not. */
    private String part(String name, JsonNode value) {
        return value.isString() ? words(value) : name.replace('_', ' ') + " " + words(value);
    }
}
