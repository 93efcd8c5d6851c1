package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.EntryReader;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.UnreadableEntry;
import hornbook.shared.exchange.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** {@code models.jsonl}: a model a line, its years and serials as pairs of numbers. */
final class ModelLines {
    private static final JsonMapper JSON = new JsonMapper();

    private final String name;
    private final EntryReader reader = new EntryReader();

    ModelLines(String name) {
        this.name = name;
    }

    void read(Path file, Found found) {
        List<String> lines;
        try {
            lines = Files.readAllLines(file);
        } catch (IOException e) {
            found.refuse(Refusal.wholeFile(name, "is not UTF-8 text"));
            return;
        }
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                found.read(1);
                line(lines.get(i), i + 1, found);
            }
        }
    }

    private void line(String line, int number, Found found) {
        try {
            if (!(JSON.readTree(line) instanceof ObjectNode tree)) {
                throw new BadRow("", "is not a JSON object");
            }
            found.add(reader.read(Kind.MODEL, JSON.writeValueAsString(asEntry(tree))), name);
        } catch (JacksonException e) {
            found.refuse(new Refusal(name, number, number, null, "is not a JSON object on one line"));
        } catch (UnreadableEntry e) {
            found.refuse(new Refusal(name, number, number, e.field(), e.why()));
        } catch (BadRow e) {
            found.refuse(new Refusal(name, number, number, e.field(), e.why()));
        }
    }

    private static ObjectNode asEntry(ObjectNode line) {
        ObjectNode entry = JSON.createObjectNode();
        line.properties().forEach(p -> {
            switch (p.getKey()) {
                case "years" -> entry.set("years", pair(p.getValue(), "years", "from", "to"));
                case "serial_anchors" -> entry.set("serial_anchors", pairs(p.getValue(), p.getKey(), "serial", "year"));
                case "serial_ranges" -> entry.set("serial_ranges", pairs(p.getValue(), p.getKey(), "from", "to"));
                case "notes" -> entry.set("notes", p.getValue());
                default -> entry.set(p.getKey(), p.getValue());
            }
        });
        if (entry.path("notes").asString("").isEmpty()) {
            entry.remove("notes");
        }
        entry.put("sureness", "as the shop has it");
        return entry;
    }

    private static ArrayNode pairs(JsonNode list, String field, String first, String second) {
        ArrayNode pairs = JSON.createArrayNode();
        list.forEach(p -> pairs.add(pair(p, field, first, second)));
        return pairs;
    }

    private static ObjectNode pair(JsonNode pair, String field, String first, String second) {
        if (!pair.isArray() || pair.size() != 2) {
            throw new BadRow(field, "is not a pair of numbers as [1915, 1927]");
        }
        ObjectNode named = JSON.createObjectNode();
        if (!pair.get(0).isNull()) {
            named.set(first, pair.get(0));
        }
        if (!pair.get(1).isNull()) {
            named.set(second, pair.get(1));
        }
        return named;
    }

    static String write(List<Model> models) {
        return models.stream().map(ModelText::line).collect(Collectors.joining());
    }
}
