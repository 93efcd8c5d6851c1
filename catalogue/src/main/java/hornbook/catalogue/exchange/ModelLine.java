package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Distribution;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Normal;
import hornbook.catalogue.entry.Shares;
import hornbook.catalogue.entry.Years;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** One line of models.jsonl: as an entry, but pairs stand in lists and what is not known is empty. */
final class ModelLine {
    private static final String SURENESS = "as the shop has it";
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonMapper mapper = JsonMapper.builder().build();

    /** The line as the JSON of an entry. */
    String entry(String line) {
        ObjectNode model = object(line);
        years(model);
        pairs(model, "serial_anchors", "serial", "year");
        pairs(model, "serial_ranges", "from", "to");
        JsonNode notes = model.get("notes");
        if (notes != null && notes.isString() && notes.stringValue().isEmpty()) {
            model.remove("notes");
        }
        if (!model.has("sureness")) {
            model.put("sureness", SURENESS);
        }
        return model.toString();
    }

    private ObjectNode object(String line) {
        try {
            if (mapper.readTree(line) instanceof ObjectNode object) {
                return object;
            }
        } catch (JacksonException e) {
            String why = e.getOriginalMessage().lines().findFirst().orElse("");
            throw new BadCell("", "is not JSON: " + why);
        }
        throw new BadCell("", "is not an object: put the model between { and }");
    }

    private static void years(ObjectNode model) {
        if (!(model.get("years") instanceof ArrayNode years)) {
            return;
        }
        if (years.isEmpty()) {
            model.remove("years");
            return;
        }
        ObjectNode span = NODES.objectNode();
        span.set("from", years.get(0));
        if (years.size() > 1) {
            span.set("to", years.get(1));
        }
        model.set("years", span);
    }

    private static void pairs(ObjectNode model, String field, String first, String second) {
        if (!(model.get(field) instanceof ArrayNode pairs)) {
            return;
        }
        ArrayNode objects = NODES.arrayNode();
        for (JsonNode pair : pairs) {
            if (!pair.isArray() || pair.size() != 2) {
                throw new BadCell(field, "must hold pairs: [" + first + ", " + second + "]");
            }
            objects.addObject().set(first, pair.get(0)).set(second, pair.get(1));
        }
        model.set(field, objects);
    }

    /** The model as a line; its map and order of taking down stand in files of their own. */
    ObjectNode write(Model model) {
        ObjectNode line = NODES.objectNode();
        line.put("id", model.id()).put("make", model.make()).put("title", model.title());
        line.put("pattern", model.pattern());
        line.set("instruments", texts(model.instruments()));
        line.set("years", years(model.years()));
        ArrayNode anchors = line.putArray("serial_anchors");
        model.serialAnchors().forEach(a -> anchors.addArray().add(a.serial()).add(a.year()));
        ArrayNode ranges = line.putArray("serial_ranges");
        model.serialRanges().forEach(r -> ranges.addArray().add(r.from()).add(r.to()));
        line.set("serial_letters", numbers(model.serialLetters()));
        ObjectNode traits = line.putObject("traits");
        model.traits().forEach((trait, said) -> traits.set(trait, said(said)));
        ObjectNode many = line.putObject("traits_many");
        model.traitsMany().forEach((trait, chances) -> many.set(trait, numbers(chances)));
        ObjectNode threads = line.putObject("threads");
        model.threads().forEach(threads::put);
        line.set("pad_set", numbers(model.padSet()));
        line.set("key_heights", numbers(model.keyHeights()));
        line.set("quirks_known", texts(model.quirksKnown()));
        line.put("notes", Objects.toString(model.notes(), ""));
        line.put("horns_seen", model.hornsSeen()).put("source", model.source());
        return rest(model, line);
    }

    /** What most models have nothing to say of. */
    private static ObjectNode rest(Model model, ObjectNode line) {
        if (!model.absent().isEmpty()) {
            line.set("absent", texts(model.absent()));
        }
        return model.sureness().equals(SURENESS) ? line : line.put("sureness", model.sureness());
    }

    private static JsonNode said(Distribution said) {
        return switch (said) {
            case Shares(var shares) -> numbers(shares);
            case Normal(var mean, var sd) ->
                NODES.objectNode().set("mean", number(mean)).set("sd", number(sd));
        };
    }

    private static ArrayNode years(@Nullable Years years) {
        List<Integer> known = new ArrayList<>();
        if (years != null) {
            Stream.of(years.from(), years.to()).filter(Objects::nonNull).forEach(known::add);
        }
        ArrayNode list = NODES.arrayNode();
        known.forEach(list::add);
        return list;
    }

    private static ArrayNode texts(List<String> texts) {
        ArrayNode list = NODES.arrayNode();
        texts.forEach(list::add);
        return list;
    }

    private static ObjectNode numbers(Map<String, Double> numbers) {
        ObjectNode object = NODES.objectNode();
        numbers.forEach((name, number) -> object.set(name, number(number)));
        return object;
    }

    /** A decimal with one digit after the point at least. */
    private static JsonNode number(double value) {
        BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
        return NODES.numberNode(exact.setScale(Math.max(1, exact.scale())));
    }
}
