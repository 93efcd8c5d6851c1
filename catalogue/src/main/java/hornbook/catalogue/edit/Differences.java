package hornbook.catalogue.edit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** Lays two states of an entry beside one another, field by field. */
final class Differences {
    private Differences() {}

    static List<Difference> between(JsonNode before, JsonNode after) {
        Map<String, String> was = Facts.of(before);
        Map<String, String> is = Facts.of(after);
        Set<String> fields = new LinkedHashSet<>(is.keySet());
        fields.addAll(was.keySet());
        return fields.stream()
                .filter(field -> !Objects.equals(was.get(field), is.get(field)))
                .map(field -> new Difference(field, was.get(field), is.get(field)))
                .toList();
    }
}
