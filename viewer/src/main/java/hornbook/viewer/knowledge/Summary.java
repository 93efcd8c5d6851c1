package hornbook.viewer.knowledge;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** A closed group in a line. */
final class Summary {
    private static final int LONGEST = 120;

    private Summary() {}

    static String of(JsonNode node) {
        String words = words(node);
        return words.length() <= LONGEST
                ? words
                : words.substring(0, LONGEST - 1).strip() + "\u2026";
    }

    private static String words(JsonNode node) {
        if (node.isObject()) {
            List<String> parts = new ArrayList<>();
            node.properties().forEach(p -> parts.add(part(p.getKey(), p.getValue())));
            return String.join(", ", parts);
        }
        if (node.isArray()) {
            return String.join(", ", node.valueStream().map(Summary::words).toList());
        }
        return Figures.written(node);
    }

    /** Words speak for themselves, numbers do not. */
    private static String part(String name, JsonNode value) {
        return value.isString() ? value.asString() : name.replace('_', ' ') + " " + words(value);
    }
}
