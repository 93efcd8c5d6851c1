package hornbook.catalogue.entry;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The JSON Schema (2020-12) of each kind of entry. */
final class EntrySchema {
    private static final String FOLDER = "/hornbook/catalogue/schema/";

    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private final JsonMapper mapper = JsonMapper.builder().build();
    private final Map<Kind, Schema> schemas = new EnumMap<>(Kind.class);

    /** Everything in which the text departs from the schema of its kind. */
    List<Problem> check(Kind kind, String file, String text) {
        try {
            JsonNode entry = mapper.readTree(text);
            return schemas.computeIfAbsent(kind, this::schema).validate(entry).stream()
                    .map(error -> problem(file, error))
                    .distinct()
                    .toList();
        } catch (JacksonException e) {
            return List.of(); // the reader says better what is wrong with it
        }
    }

    private Schema schema(Kind kind) {
        String path = FOLDER + kind.word() + ".json";
        InputStream in = Objects.requireNonNull(EntrySchema.class.getResourceAsStream(path), path);
        return registry.getSchema(in);
    }

    private static Problem problem(String file, Error error) {
        String place = place(error.getInstanceLocation());
        String property = Objects.requireNonNullElse(error.getProperty(), "");
        String inner = place.isEmpty() || property.isEmpty() ? place + property : place + "." + property;
        return switch (error.getKeyword()) {
            case "required" -> new Problem(file, inner, "is missing", "add it", true);
            case "additionalProperties" ->
                new Problem(file, inner, "is not a field of this kind", "take it out, or mend its name", true);
            default -> new Problem(file, place, error.getMessage(), "see the schema of its kind", true);
        };
    }

    /** Names and list numbers from 1, joined by dots. */
    private static String place(NodePath path) {
        StringBuilder place = new StringBuilder();
        for (int i = 0; i < path.getNameCount(); i++) {
            Object element = path.getElement(i);
            Object shown = element instanceof Integer index ? (Object) (index + 1) : element;
            place.append(i == 0 ? "" : ".").append(shown);
        }
        return place.toString();
    }
}
