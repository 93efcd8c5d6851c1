package hornbook.catalogue.edit;

import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.EntryWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** What an entry says, field by field, as words. */
public final class Facts {
    /** What a line of a list is called by; the first that it has. */
    private static final List<String> CALLED_BY =
            List.of("id", "key", "same", "of", "serial", "piece", "truth", "from", "step");

    private final Map<String, String> said = new LinkedHashMap<>();

    private Facts() {}

    /** Every field that says something, in the order of the file; lines of a list go by what they are called. */
    public static Map<String, String> of(Entry entry) {
        return of(new EntryWriter().tree(entry));
    }

    static Map<String, String> of(JsonNode entry) {
        Facts facts = new Facts();
        facts.gather("", entry);
        return facts.said;
    }

    private void gather(String place, JsonNode node) {
        if (node.isObject()) {
            node.properties().forEach(p -> gather(below(place, p.getKey()), p.getValue()));
        } else if (!node.isArray()) {
            said.put(place, words(node));
        } else if (node.isEmpty() || node.get(0).isValueNode()) {
            List<String> all = new ArrayList<>();
            node.forEach(element -> all.add(words(element)));
            if (!all.isEmpty()) {
                said.put(place, String.join("; ", all));
            }
        } else {
            lines(place, node);
        }
    }

    private void lines(String place, JsonNode list) {
        Set<String> used = new LinkedHashSet<>();
        for (JsonNode line : list) {
            String name = name(line, used.size() + 1);
            while (!used.add(name)) {
                name += " again";
            }
            gather(below(place, name), line);
        }
    }

    private static String name(JsonNode line, int place) {
        return CALLED_BY.stream()
                .flatMap(by -> Stream.ofNullable(line.get(by)))
                .findFirst()
                .map(Facts::words)
                .orElse(Integer.toString(place));
    }

    private static String below(String place, String name) {
        return place.isEmpty() ? name : place + "." + name;
    }

    /** A number without a needless point, so that 1 and 1.0 are alike. */
    private static String words(JsonNode value) {
        if (value.isBoolean()) {
            return value.asBoolean() ? "yes" : "no";
        }
        return value.isNumber() ? value.decimalValue().stripTrailingZeros().toPlainString() : value.asString();
    }
}
