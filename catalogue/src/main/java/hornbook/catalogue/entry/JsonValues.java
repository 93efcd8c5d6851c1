package hornbook.catalogue.entry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** JSON as maps, lists, texts, longs, doubles and booleans. */
final class JsonValues {
    private final JsonFactory json = new JsonFactory();

    Object read(String text) {
        try (JsonParser in = json.createParser(ObjectReadContext.empty(), text)) {
            return whole(in);
        } catch (JacksonException e) {
            throw notJson(e);
        }
    }

    Object read(byte[] text) {
        try (JsonParser in = json.createParser(ObjectReadContext.empty(), text)) {
            return whole(in);
        } catch (JacksonException e) {
            throw notJson(e);
        }
    }

    private Object whole(JsonParser in) {
        if (in.nextToken() == null) {
            throw new UnreadableEntry("", "is empty", "write the entry into it, or remove it");
        }
        Object value = value(in);
        if (in.nextToken() != null) {
            throw new UnreadableEntry("", "something follows the entry", "take out what stands behind it");
        }
        return value;
    }

    private Object value(JsonParser in) {
        return switch (in.currentToken()) {
            case START_OBJECT -> object(in);
            case START_ARRAY -> array(in);
            case VALUE_STRING -> in.getString();
            case VALUE_NUMBER_INT ->
                in.getNumberType() == JsonParser.NumberType.BIG_INTEGER
                        ? (Object) in.getDoubleValue()
                        : (Object) in.getLongValue();
            case VALUE_NUMBER_FLOAT -> in.getDoubleValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            default -> throw new UnreadableEntry("", "null stands for nothing here", "leave out the field");
        };
    }

    private Map<String, Object> object(JsonParser in) {
        Map<String, Object> object = new LinkedHashMap<>();
        while (in.nextToken() != JsonToken.END_OBJECT) {
            String name = in.currentName();
            in.nextToken();
            try {
                if (object.put(name, value(in)) != null) {
                    throw new UnreadableEntry("", "is there twice", "keep one of them");
                }
            } catch (UnreadableEntry e) {
                throw e.below(name);
            }
        }
        return object;
    }

    private List<Object> array(JsonParser in) {
        List<Object> array = new ArrayList<>();
        while (in.nextToken() != JsonToken.END_ARRAY) {
            array.add(value(in));
        }
        return array;
    }

    private static UnreadableEntry notJson(JacksonException e) {
        String first = e.getOriginalMessage().lines().findFirst().orElse("");
        String place =
                e.getLocation() == null ? "" : ", line " + e.getLocation().getLineNr();
        return new UnreadableEntry("", "is not JSON" + place + ": " + first, "mend it, or write it afresh");
    }
}
