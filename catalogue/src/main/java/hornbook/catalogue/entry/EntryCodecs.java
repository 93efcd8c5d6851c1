package hornbook.catalogue.entry;

import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.ValueSerializer;

/** How the values whose JSON differs from their record are read and written. */
final class EntryCodecs {
    private EntryCodecs() {}

    /** A condition is one line of text. */
    static final class ReadCondition extends ValueDeserializer<Condition> {
        @Override
        public Condition deserialize(JsonParser parser, DeserializationContext context) {
            String text = parser.getValueAsString("");
            try {
                return Conditions.read(text);
            } catch (IllegalArgumentException e) {
                return context.reportInputMismatch(Condition.class, "%s", e.getMessage());
            }
        }
    }

    /** The counterpart of {@link ReadCondition}. */
    static final class WriteCondition extends ValueSerializer<Condition> {
        @Override
        public void serialize(Condition value, JsonGenerator out, SerializationContext context) {
            out.writeString(Conditions.write(value));
        }
    }

    /** An object of exactly mean and sd is a measurement, any other one shares by value. */
    static final class ReadDistribution extends ValueDeserializer<Distribution> {
        @Override
        public Distribution deserialize(JsonParser parser, DeserializationContext context) {
            if (!parser.isExpectedStartObjectToken()) {
                return context.reportInputMismatch(
                        Distribution.class, "shares by value, or mean and sd, were expected");
            }
            Map<String, Double> numbers = new LinkedHashMap<>();
            while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
                String name = parser.currentName();
                if (!parser.nextToken().isNumeric()) {
                    return context.reportInputMismatch(Distribution.class, "%s must be a number", name);
                }
                numbers.put(name, parser.getDoubleValue());
            }
            Double mean = numbers.get("mean");
            Double sd = numbers.get("sd");
            return numbers.size() == 2 && mean != null && sd != null ? new Normal(mean, sd) : new Shares(numbers);
        }
    }

    /** Shares are written without a name of their own. */
    static final class WriteShares extends ValueSerializer<Shares> {
        @Override
        public void serialize(Shares value, JsonGenerator out, SerializationContext context) {
            out.writeStartObject();
            value.of().forEach(out::writeNumberProperty);
            out.writeEndObject();
        }
    }
}
