package hornbook.catalogue.entry;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialect;
import com.networknt.schema.dialect.Dialects;
import com.networknt.schema.keyword.AnnotationKeyword;
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

    /** Says what a field may name; that is for forms, and checked by {@link Links}. */
    private static final String NAMES = "names";

    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(Dialect.builder(Dialects.getDraft202012())
            .keyword(new AnnotationKeyword(NAMES))
            .build());
    private final JsonMapper mapper = JsonMapper.builder().build();
    private final Map<Kind, Schema> schemas = new EnumMap<>(Kind.class);

    /** Everything in which the text departs from the schema of its kind. */
    List<Problem> check(Kind kind, String file, String text) {
        try {
            JsonNode entry = mapper.readTree(text);
            return of(kind).validate(entry).stream()
                    .map(error -> problem(file, error))
                    .distinct()
                    .toList();
        } catch (JacksonException e) {
            return List.of(); // the reader says better what is wrong with it
        }
    }

    private synchronized Schema of(Kind kind) {
        return schemas.computeIfAbsent(kind, this::schema);
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
            default -> plain(file, place, error);
        };
    }

    /** In the words of one who has never heard of a schema. */
    private static Problem plain(String file, String place, Error error) {
        JsonNode rule = error.getSchemaNode();
        String given =
                error.getInstanceNode().isValueNode() ? error.getInstanceNode().asString() : "this";
        return switch (error.getKeyword()) {
            case "type" -> new Problem(file, place, "must be " + sort(rule), "write it so", true);
            case "enum" -> {
                List<String> words = rule.valueStream().map(JsonNode::asString).toList();
                String meant = Nearest.of(given, words)
                        .map(n -> "perhaps " + n + " is meant")
                        .orElse("choose one");
                String why = "“" + given + "” is not one of " + String.join(", ", words);
                yield new Problem(file, place, why, meant, true);
            }
            case "minimum" -> new Problem(file, place, "must be at least " + rule.asString(), "look at it again", true);
            case "exclusiveMinimum" ->
                new Problem(file, place, "must be above " + rule.asString(), "look at it again", true);
            case "maximum" -> new Problem(file, place, "must be at most " + rule.asString(), "look at it again", true);
            case "minLength", "minProperties" ->
                new Problem(file, place, "is blank", "fill it in, or take it out", true);
            case "maxLength" ->
                new Problem(file, place, "must be at most " + rule.asString() + " letters", "make it shorter", true);
            case "pattern" ->
                new Problem(file, place, "may hold small letters, digits, hyphens and dots only", "write it so", true);
            default -> new Problem(file, place, error.getMessage(), "look at it again", true);
        };
    }

    private static String sort(JsonNode type) {
        return switch (type.asString("")) {
            case "number" -> "a number";
            case "integer" -> "a whole number";
            case "boolean" -> "true or false";
            case "string" -> "text";
            case "array" -> "a list";
            default -> "an object with fields";
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
