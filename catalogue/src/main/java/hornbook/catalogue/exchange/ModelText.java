package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Distribution;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Normal;
import hornbook.catalogue.entry.Shares;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/** A model as one line of JSON with a blank after each comma and colon, as the exchange format has it. */
final class ModelText {
    private static final JsonMapper JSON = new JsonMapper();

    private ModelText() {}

    static String line(Model m) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("id", text(m.id()));
        parts.put("make", text(m.make()));
        parts.put("title", text(m.title()));
        parts.put("pattern", text(m.pattern()));
        parts.put("instruments", texts(m.instruments()));
        parts.put(
                "years",
                m.years() == null
                        ? "[null, null]"
                        : list(List.of(whole(m.years().from()), whole(m.years().to()))));
        parts.put(
                "serial_anchors",
                list(m.serialAnchors().stream()
                        .map(a -> "[" + a.serial() + ", " + a.year() + "]")
                        .toList()));
        parts.put(
                "serial_ranges",
                list(m.serialRanges().stream()
                        .map(r -> "[" + r.from() + ", " + r.to() + "]")
                        .toList()));
        parts.put("serial_letters", numbers(m.serialLetters()));
        parts.put("traits", object(mapped(m.traits())));
        Map<String, String> many = new LinkedHashMap<>();
        m.traitsMany().forEach((trait, chances) -> many.put(trait, numbers(chances)));
        parts.put("traits_many", object(many));
        Map<String, String> threads = new LinkedHashMap<>();
        m.threads().forEach((use, thread) -> threads.put(use, text(thread)));
        parts.put("threads", object(threads));
        parts.put("pad_set", numbers(m.padSet()));
        parts.put("key_heights", numbers(m.keyHeights()));
        parts.put("quirks_known", texts(m.quirksKnown()));
        parts.put("notes", text(m.notes() == null ? "" : m.notes()));
        parts.put("horns_seen", Integer.toString(m.hornsSeen()));
        parts.put("source", text(m.source()));
        if (!m.absent().isEmpty()) {
            parts.put("absent", texts(m.absent()));
        }
        return object(parts) + "\n";
    }

    private static Map<String, String> mapped(Map<String, Distribution> traits) {
        Map<String, String> all = new LinkedHashMap<>();
        traits.forEach((trait, known) -> all.put(
                trait,
                switch (known) {
                    case Shares shares -> numbers(shares.of());
                    case Normal(double mean, double sd) -> "{\"mean\": " + real(mean) + ", \"sd\": " + real(sd) + "}";
                }));
        return all;
    }

    private static String numbers(Map<String, Double> numbers) {
        Map<String, String> written = new LinkedHashMap<>();
        numbers.forEach((name, number) -> written.put(name, real(number)));
        return object(written);
    }

    private static String object(Map<String, String> parts) {
        return parts.entrySet().stream()
                .map(p -> text(p.getKey()) + ": " + p.getValue())
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static String texts(Collection<String> texts) {
        return list(texts.stream().map(ModelText::text).toList());
    }

    private static String list(List<String> parts) {
        return parts.stream().collect(Collectors.joining(", ", "[", "]"));
    }

    private static String text(String text) {
        return JSON.writeValueAsString(text);
    }

    private static String whole(@Nullable Integer number) {
        return number == null ? "null" : number.toString();
    }

    /** A real number keeps a place after its point. */
    private static String real(double number) {
        String plain = BigDecimal.valueOf(number).toPlainString();
        return plain.contains(".") ? plain : plain + ".0";
    }
}
