package hornbook.catalogue.entry;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectReader;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/** Entries as JSON: names in snake_case, what is absent has no key, unknown names are refused. */
public final class EntryJson {
    private final JsonMapper mapper = JsonMapper.builder()
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .changeDefaultPropertyInclusion(p -> p.withValueInclusion(JsonInclude.Include.NON_EMPTY)
                    .withContentInclusion(JsonInclude.Include.ALWAYS))
            .withConfigOverride(List.class, o -> o.setNullHandling(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY)))
            .withConfigOverride(Map.class, o -> o.setNullHandling(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY)))
            .addModule(new SimpleModule()
                    .addSerializer(Condition.class, new EntryCodecs.WriteCondition())
                    .addDeserializer(Condition.class, new EntryCodecs.ReadCondition())
                    .addDeserializer(Distribution.class, new EntryCodecs.ReadDistribution())
                    .addSerializer(Shares.class, new EntryCodecs.WriteShares()))
            .build();

    /**
     * Reads one entry.
     *
     * @param kind which record to make
     * @param json one JSON object
     * @throws UnreadableEntry naming the field and what is wrong with it
     */
    public Entry read(Kind kind, String json) throws UnreadableEntry {
        try {
            Entry entry = mapper.readerFor(kind.type()).readValue(json);
            Missing.firstIn(entry).ifPresent(field -> {
                throw new UnreadableEntry(field, "is missing", "add it");
            });
            return entry;
        } catch (JacksonException e) {
            throw UnreadableEntry.from(e);
        }
    }

    /** Writes one entry as readable JSON with a line end at its end. */
    public String write(Entry entry) {
        return new ReadableJson().write(mapper.valueToTree(entry)) + "\n";
    }

    /** The entry as a JSON tree. */
    public JsonNode tree(Entry entry) {
        return mapper.valueToTree(entry);
    }

    /** Reads a shipped file: one JSON array, an entry an element. It is trusted: tests check it. */
    List<Entry> readAll(Kind kind, byte[] json) {
        ObjectReader reader = mapper.readerForListOf(kind.type());
        return reader.readValue(json);
    }
}
