package hornbook.catalogue.edit;

import hornbook.catalogue.entry.Kind;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What each kind of entry asks for, read from its JSON Schema, so that form and check are never at odds. */
public final class Forms {
    private static final String FOLDER = "/hornbook/catalogue/schema/";

    private Forms() {}

    /** The fields of a kind, in the order of its files. */
    public static List<Field> of(Kind kind) {
        try (InputStream in = Forms.class.getResourceAsStream(FOLDER + kind.word() + ".json")) {
            JsonNode schema = JsonMapper.shared().readTree(Objects.requireNonNull(in, kind.word()));
            return new Reader(schema).fields(schema);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read the schema of " + kind.word(), e);
        }
    }

    private record Reader(JsonNode schema) {
        List<Field> fields(JsonNode object) {
            List<String> needed = texts(object.path("required"));
            List<Field> fields = new ArrayList<>();
            object.path("properties").properties().forEach(property -> {
                JsonNode own = property.getValue();
                fields.add(new Field(property.getKey(), about(own), needed.contains(property.getKey()), shape(own)));
            });
            return fields;
        }

        /** What the field says of itself, else what is said of everything of its sort. */
        private String about(JsonNode own) {
            String said = own.path("description").asString("");
            return said.isEmpty() ? resolved(own).path("description").asString("") : said;
        }

        private JsonNode resolved(JsonNode node) {
            String ref = node.path("$ref").asString("");
            return ref.isEmpty() ? node : schema.at(ref.substring(1));
        }

        private Shape shape(JsonNode given) {
            JsonNode node = resolved(given);
            if (node.has("enum")) {
                return new Shape.Choice(texts(node.path("enum")));
            }
            return switch (node.path("type").asString("")) {
                case "string" -> new Shape.Text(texts(node.path("names")));
                case "number" -> new Shape.Figure(false, least(node), number(node.path("maximum")));
                case "integer" -> new Shape.Figure(true, least(node), number(node.path("maximum")));
                case "boolean" -> new Shape.YesNo();
                case "array" -> new Shape.ListOf(shape(node.path("items")));
                case "object" -> object(node);
                default -> throw new IllegalStateException("no form for " + node);
            };
        }

        private Shape object(JsonNode node) {
            return node.has("properties")
                    ? new Shape.Group(fields(node))
                    : new Shape.ByName(
                            texts(node.path("propertyNames").path("names")), shape(node.path("additionalProperties")));
        }

        private static @Nullable Double least(JsonNode node) {
            return number(node.has("minimum") ? node.path("minimum") : node.path("exclusiveMinimum"));
        }

        private static @Nullable Double number(JsonNode node) {
            return node.isNumber() ? (Double) node.asDouble() : null;
        }

        private static List<String> texts(JsonNode array) {
            List<String> texts = new ArrayList<>();
            array.forEach(element -> texts.add(element.asString()));
            return texts;
        }
    }
}
