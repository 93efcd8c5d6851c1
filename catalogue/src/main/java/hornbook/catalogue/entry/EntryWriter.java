package hornbook.catalogue.entry;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/** Writes entries as JSON that {@link EntryReader} reads back equal. */
public final class EntryWriter {
    private final JsonMapper mapper = JsonMapper.builder()
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .changeDefaultPropertyInclusion(p -> p.withValueInclusion(JsonInclude.Include.NON_EMPTY)
                    .withContentInclusion(JsonInclude.Include.ALWAYS))
            .addModule(new SimpleModule()
                    .addSerializer(Condition.class, new ConditionText())
                    .addSerializer(Shares.class, new SharesByValue()))
            .build();

    /** One entry as readable JSON, with a line end at its end. */
    public String write(Entry entry) {
        return new ReadableJson().write(tree(entry)) + "\n";
    }

    /** A shipped file: one array, an entry an element. */
    String writeAll(List<Entry> entries) {
        return new ReadableJson().write(mapper.valueToTree(entries)) + "\n";
    }

    /** One entry as a JSON tree. */
    public JsonNode tree(Entry entry) {
        return mapper.valueToTree(entry);
    }

    private static final class ConditionText extends ValueSerializer<Condition> {
        @Override
        public void serialize(Condition value, JsonGenerator out, SerializationContext context) {
            out.writeString(Conditions.write(value));
        }
    }

    private static final class SharesByValue extends ValueSerializer<Shares> {
        @Override
        public void serialize(Shares value, JsonGenerator out, SerializationContext context) {
            out.writeStartObject();
            value.of().forEach(out::writeNumberProperty);
            out.writeEndObject();
        }
    }
}
