package hornbook.catalogue.edit;

import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.ReadableJson;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * An entry as it is being written: it may lack what is needed and hold what is wrong. Immutable; each change makes
 * another.
 */
public final class Draft {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Kind kind;
    private final ObjectNode tree;

    private Draft(Kind kind, ObjectNode tree) {
        this.kind = kind;
        this.tree = tree;
    }

    /** An empty one. */
    public static Draft blank(Kind kind) {
        Draft blank = new Draft(kind, NODES.objectNode());
        return kind == Kind.MODEL ? blank.set(Spot.of("horns_seen"), NODES.numberNode(0)) : blank;
    }

    /** What an entry says. */
    public static Draft of(Entry entry) {
        return of(entry.entryKind(), new EntryWriter().tree(entry));
    }

    /**
     * What a file says.
     *
     * @param tree an object
     */
    public static Draft of(Kind kind, JsonNode tree) {
        return new Draft(kind, (ObjectNode) tree.deepCopy());
    }

    public Kind kind() {
        return kind;
    }

    /** What stands there; empty where nothing does. */
    public Optional<JsonNode> at(Spot spot) {
        JsonNode node = tree;
        for (String step : spot.steps()) {
            node = inside(node, step);
        }
        return node.isMissingNode() ? Optional.empty() : Optional.of(node);
    }

    /** The words that stand there; empty where there are none. */
    public String text(Spot spot) {
        return at(spot).filter(JsonNode::isValueNode).map(JsonNode::asString).orElse("");
    }

    /** The same with words there. */
    public Draft set(Spot spot, String words) {
        return set(spot, StringNode.valueOf(words));
    }

    /** The same with something there; what it lies in is made where it is not. */
    public Draft set(Spot spot, JsonNode value) {
        ObjectNode copy = tree.deepCopy();
        JsonNode outer = made(copy, spot.outer());
        if (outer instanceof ArrayNode list) {
            list.set(place(spot.last()), value);
        } else if (outer instanceof ObjectNode object) {
            object.set(spot.last(), value);
        }
        return new Draft(kind, copy);
    }

    /** The same with one more at the end of a list. */
    public Draft add(Spot list, JsonNode value) {
        ArrayNode longer = at(list).filter(JsonNode::isArray)
                .map(node -> ((ArrayNode) node).deepCopy())
                .orElseGet(NODES::arrayNode);
        longer.add(value);
        return set(list, longer);
    }

    /** The same without what stands there. */
    public Draft without(Spot spot) {
        ObjectNode copy = tree.deepCopy();
        JsonNode outer = new Draft(kind, copy).at(spot.outer()).orElse(NODES.missingNode());
        if (outer instanceof ArrayNode list) {
            list.remove(place(spot.last()));
        } else if (outer instanceof ObjectNode object) {
            object.remove(spot.last());
        }
        return new Draft(kind, copy);
    }

    /** As a file says it, without what was left blank. */
    public String json() {
        ObjectNode copy = tree.deepCopy();
        prune(copy);
        return new ReadableJson().write(copy) + "\n";
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Draft draft && kind == draft.kind && tree.equals(draft.tree);
    }

    @Override
    public int hashCode() {
        return tree.hashCode();
    }

    @Override
    public String toString() {
        return kind.word() + " " + tree;
    }

    private static JsonNode inside(JsonNode node, String step) {
        return node.isArray() ? node.path(place(step)) : node.path(step);
    }

    private static int place(String step) {
        return Integer.parseInt(step) - 1;
    }

    private static JsonNode made(ObjectNode tree, Spot spot) {
        JsonNode node = tree;
        for (String step : spot.steps()) {
            JsonNode next = inside(node, step);
            if (next.isMissingNode() && node instanceof ObjectNode object) {
                next = object.putObject(step);
            }
            node = next;
        }
        return node;
    }

    /** A blank line of a list stays, so that it is asked for; a blank field is one that says nothing. */
    private static void prune(JsonNode node) {
        node.forEach(Draft::prune);
        if (node instanceof ObjectNode object) {
            object.removeIf(
                    inner -> inner.isString() ? inner.asString().isBlank() : inner.isContainer() && inner.isEmpty());
        }
    }
}
