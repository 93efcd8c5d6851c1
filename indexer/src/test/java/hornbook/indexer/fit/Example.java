package hornbook.indexer.fit;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import hornbook.indexer.index.Shops;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.shop.MemberState;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.shop.ToolMember;
import hornbook.shared.store.Books;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One row of the project's trade notes on fit: a question, the lots on hand, the answer. */
record Example(Map<String, String> row) {
    private static final Set<String> NO_DIMENSION =
            Set.of("item", "thread", "material", "colour", "count", "reserve", "keepsake", "stock");
    private static final Set<String> NOT_ASKED = Set.of("item", "count");

    static List<Example> all() throws Exception {
        InputStream in = Example.class.getResourceAsStream("fit_examples.csv");
        try (var rows = CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return rows.stream()
                    .map(NamedCsvRecord::getFieldsAsMap)
                    .map(Example::new)
                    .toList();
        }
    }

    String get(String column) {
        return row.get(column);
    }

    Map<String, String> wanted() {
        return keys(get("wanted"));
    }

    /** By the letter of the lot. */
    Map<String, Map<String, String>> lots() {
        Map<String, Map<String, String>> lots = new LinkedHashMap<>();
        for (String lot : get("on_hand").split(" ## ")) {
            lots.put(lot.substring(0, lot.indexOf(':')), keys(lot.substring(lot.indexOf(':') + 1)));
        }
        return lots;
    }

    private static Map<String, String> keys(String text) {
        Map<String, String> keys = new LinkedHashMap<>();
        for (String pair : text.split(";")) {
            keys.put(
                    pair.substring(0, pair.indexOf('=')).strip(),
                    pair.substring(pair.indexOf('=') + 1).strip());
        }
        return keys;
    }

    /** Ids of the operations of the best plan, or none for a lot that fits as it is. */
    List<String> steps() {
        return operations(get("steps"));
    }

    static List<String> operations(String steps) {
        return Arrays.stream(steps.split(" \\+ "))
                .map(step -> step.replaceFirst("\\(.*", "").strip())
                .filter(step -> step.startsWith("op-"))
                .sorted()
                .toList();
    }

    /** Letter of each lot refused, to the reason. */
    Map<String, String> refused() {
        Map<String, String> refused = new LinkedHashMap<>();
        for (String each : get("refused").split(" ## ")) {
            if (!each.isBlank()) {
                refused.put(
                        each.substring(0, each.indexOf(':')),
                        each.substring(each.indexOf(':') + 1).strip());
            }
        }
        return refused;
    }

    FitQuestion question(@Nullable String screw, List<String> also, boolean reserve) {
        List<String> with = wanted().entrySet().stream()
                .filter(entry -> !NOT_ASKED.contains(entry.getKey()))
                .map(entry -> entry.getKey() + "="
                        + (screw != null && entry.getKey().equals("thread") ? screw : entry.getValue()))
                .collect(Collectors.toCollection(ArrayList::new));
        with.addAll(also);
        FitQuestion plain = FitQuestion.of(wanted().get("item"), with.toArray(String[]::new));
        return new FitQuestion(
                plain.kind(),
                plain.diameter(),
                plain.length(),
                plain.bore(),
                plain.thread(),
                plain.with(),
                List.of(),
                plain.model(),
                reserve,
                Integer.parseInt(wanted().getOrDefault("count", "1")));
    }

    /** Puts the lots of the row into books, and the dies, taps and drills it takes to be there. */
    void into(Books books, List<String> letters) {
        books.write("the lots of " + get("id"), w -> {
            w.put(new Cabinet("c-x", "x", 1, 1, "", ""));
            w.put(new Drawer("d-x", "c-x", 1, 1, "x", "", "", LabelState.RIGHT, null, ""));
            lots().forEach((letter, keys) -> {
                if (letters.isEmpty() || letters.contains(letter)) {
                    w.put(lot(letter, keys));
                    w.put(Shops.count("v-" + letter, letter, Integer.parseInt(keys.getOrDefault("count", "5"))));
                }
            });
            w.put(new ShopTool("tool-taps-dies", "taps and dies", "d-x", null, "", "good", "", null, "", ""));
            List.of("3-48 UNC", "2-56 UNC", "M3x0.6", "M3x0.5", "4-40 UNC")
                    .forEach(die ->
                            w.put(new ToolMember("tool-taps-dies", "die", die, MemberState.GOOD, null, null, "")));
        });
    }

    private Lot lot(String letter, Map<String, String> keys) {
        String stock = keys.get("stock");
        String dimensions = keys.entrySet().stream()
                .filter(key -> !NO_DIMENSION.contains(key.getKey()))
                .map(key -> key.getKey() + "=" + key.getValue())
                .collect(Collectors.joining(";"));
        return new Lot(
                letter,
                "d-x",
                null,
                keys.getOrDefault("item", wanted().get("item")),
                "lot " + letter,
                stock.endsWith("-make") ? List.of("k-some") : List.of(),
                List.of(),
                dimensions,
                keys.get("thread"),
                keys.getOrDefault("material", ""),
                keys.getOrDefault("colour", ""),
                stock.startsWith("salvaged")
                        ? LotState.SALVAGED
                        : stock.startsWith("new") ? LotState.NEW : LotState.BLANK,
                Count.ZERO,
                keys.containsKey("reserve"),
                keys.containsKey("keepsake"),
                null,
                null,
                "");
    }
}
