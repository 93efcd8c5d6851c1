package hornbook.catalogue.pack;

import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.EntryReader;
import hornbook.catalogue.entry.EntryWriter;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** An entry as it reads in another shop: numbers of our jobs mean other jobs there. */
final class Abroad {
    private static final Pattern THIS_SHOP = Pattern.compile("\\bthis shop\\b[^;.]*");
    private static final String ANOTHER = "another shop";

    private final EntryReader reader;
    private final EntryWriter writer;

    Abroad(EntryReader reader, EntryWriter writer) {
        this.reader = reader;
        this.writer = writer;
    }

    Entry of(Entry entry) {
        JsonNode tree = writer.tree(entry);
        change(tree);
        return reader.read(entry.entryKind(), tree.toString());
    }

    private static void change(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.remove("job");
            JsonNode source = object.get("source");
            if (source != null && source.isString()) {
                object.put("source", THIS_SHOP.matcher(source.asString()).replaceAll(ANOTHER));
            }
            object.values().forEach(Abroad::change);
        } else if (node instanceof ArrayNode list) {
            list.values().forEach(Abroad::change);
        }
    }
}
