package hornbook.catalogue.entry;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** Lays JSON out for people: what fits on a line stands on one, the rest one element a line. */
final class ReadableJson {
    private static final int WIDTH = 110;

    String write(JsonNode node) {
        return lay(node, 0, 0);
    }

    private String lay(JsonNode node, int indent, int before) {
        String flat = flat(node);
        if (!node.isContainer() || node.isEmpty() || (indent > 0 && indent + before + flat.length() <= WIDTH)) {
            return flat;
        }
        String inner = " ".repeat(indent + 2);
        List<String> lines = new ArrayList<>();
        if (node.isArray()) {
            node.forEach(e -> lines.add(inner + lay(e, indent + 2, 0)));
        } else {
            node.properties().forEach(p -> {
                String name = quoted(p.getKey()) + ": ";
                lines.add(inner + name + lay(p.getValue(), indent + 2, name.length()));
            });
        }
        String body = String.join(",\n", lines);
        String end = "\n" + " ".repeat(indent);
        return node.isArray() ? "[\n" + body + end + "]" : "{\n" + body + end + "}";
    }

    private static String flat(JsonNode node) {
        List<String> parts = new ArrayList<>();
        if (node.isArray()) {
            node.forEach(e -> parts.add(flat(e)));
            return "[" + String.join(", ", parts) + "]";
        }
        if (node.isObject()) {
            node.properties().forEach(p -> parts.add(quoted(p.getKey()) + ": " + flat(p.getValue())));
            return "{" + String.join(", ", parts) + "}";
        }
        return node.toString();
    }

    private static String quoted(String text) {
        return tools.jackson.databind.node.StringNode.valueOf(text).toString();
    }
}
