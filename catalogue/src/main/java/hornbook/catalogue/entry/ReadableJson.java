package hornbook.catalogue.entry;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.StringNode;

/** Lays JSON out for people: what fits on a line stands on one; lists of words fill lines; the rest is indented. */
public final class ReadableJson {
    private static final int WIDTH = 110;

    /** The node over as many lines as it needs. */
    public String write(JsonNode node) {
        return broken(node, 0);
    }

    private String lay(JsonNode node, int indent, int before) {
        String flat = flat(node);
        boolean fits = indent + before + flat.length() <= WIDTH;
        return fits || !node.isContainer() || node.isEmpty() ? flat : broken(node, indent);
    }

    private String broken(JsonNode node, int indent) {
        String end = "\n" + " ".repeat(indent);
        String body = String.join(",\n", node.isArray() ? elements(node, indent + 2) : members(node, indent + 2));
        return node.isArray() ? "[\n" + body + end + "]" : "{\n" + body + end + "}";
    }

    private List<String> members(JsonNode node, int indent) {
        List<String> lines = new ArrayList<>();
        node.properties().forEach(p -> {
            String name = quoted(p.getKey()) + ": ";
            lines.add(" ".repeat(indent) + name + lay(p.getValue(), indent, name.length()));
        });
        return lines;
    }

    private List<String> elements(JsonNode node, int indent) {
        List<String> lines = new ArrayList<>();
        for (JsonNode element : node) {
            String text = lay(element, indent, 0);
            if (!lines.isEmpty() && !element.isContainer() && lines.getLast().length() + 2 + text.length() < WIDTH) {
                lines.add(lines.removeLast() + ", " + text);
            } else {
                lines.add(" ".repeat(indent) + text);
            }
        }
        return lines;
    }

    /** The node on one line, a blank after each comma and colon. */
    public static String flat(JsonNode node) {
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
        return StringNode.valueOf(text).toString();
    }
}
