package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A public table of rows with a class in the last column, in the ARFF form: columns become traits, classes models. */
final class OpenData {
    /** A cell that nobody looked at. */
    private static final String NOT_LOOKED_AT = "?";

    private final JsonMapper json = new JsonMapper();
    private final Map<String, List<String>> columns = new LinkedHashMap<>();
    private final List<List<String>> rows = new ArrayList<>();

    OpenData(Path arff) throws IOException {
        boolean data = false;
        for (String line : Files.readAllLines(arff)) {
            String text = line.strip();
            if (text.isEmpty() || text.startsWith("%")) {
                continue;
            }
            if (data) {
                rows.add(cells(text));
            } else if (text.toLowerCase(java.util.Locale.ROOT).startsWith("@attribute")) {
                String[] parts = text.split("[{}]");
                columns.put("open-" + parts[0].strip().split("\\s+")[1], cells(parts[1]));
            } else {
                data = text.toLowerCase(java.util.Locale.ROOT).startsWith("@data");
            }
        }
    }

    /** Written as ids are: small letters, figures, hyphens. */
    private static List<String> cells(String text) {
        return List.of(text.split(",")).stream()
                .map(String::strip)
                .map(c -> c.equals(NOT_LOOKED_AT) ? c : c.replaceAll("[^A-Za-z0-9]+", "-"))
                .toList();
    }

    List<List<String>> rows() {
        return rows;
    }

    static String classOf(List<String> row) {
        return "m-" + row.getLast();
    }

    /** What was looked at in a row. */
    List<Seen> looks(List<String> row) {
        List<Seen> looks = new ArrayList<>();
        int i = 0;
        for (String trait : columns.keySet()) {
            String cell = row.get(i++);
            if (i < row.size() && !cell.equals(NOT_LOOKED_AT)) {
                looks.add(new Seen.OneOf(trait, List.of(cell)));
            }
        }
        return looks;
    }

    /** Entries as the rows state them, by plain shares, and the columns as traits missed that often. */
    Catalogue catalogue(Path folder, List<List<String>> known, double miss) throws IOException {
        write(folder.resolve("make/k-open.json"), entry("k-open", "Open data"));
        for (Map.Entry<String, List<String>> column : traits().entrySet()) {
            write(
                    folder.resolve("trait/" + column.getKey() + ".json"),
                    trait(column.getKey(), column.getValue(), miss));
        }
        for (String name : known.stream().map(OpenData::classOf).distinct().toList()) {
            List<List<String>> own =
                    known.stream().filter(r -> classOf(r).equals(name)).toList();
            write(folder.resolve("model/" + name + ".json"), model(name, own));
        }
        return Catalogue.open(folder);
    }

    private Map<String, List<String>> traits() {
        Map<String, List<String>> traits = new LinkedHashMap<>(columns);
        traits.remove(List.copyOf(columns.keySet()).getLast());
        return traits;
    }

    private ObjectNode entry(String id, String title) {
        ObjectNode entry = json.createObjectNode();
        entry.put("id", id).put("title", title);
        return entry.put("source", "open data").put("sureness", "published");
    }

    private ObjectNode trait(String id, List<String> values, double miss) {
        ObjectNode trait = entry(id, id);
        trait.put("question", id).put("kind", "one").put("group", "open data").put("look", "as given");
        trait.put("cost", "glance").put("miss", miss).put("modelled", true);
        values.forEach(v -> trait.withArray("values").addObject().put("id", v).put("description", v));
        return trait;
    }

    private ObjectNode model(String id, List<List<String>> own) {
        ObjectNode model = entry(id, id);
        model.put("make", "k-open").put("pattern", id);
        model.putArray("instruments").add("alto");
        ObjectNode traits = model.putObject("traits");
        int i = 0;
        for (String trait : traits().keySet()) {
            Map<String, Integer> counts = new LinkedHashMap<>();
            for (List<String> row : own) {
                if (!row.get(i).equals(NOT_LOOKED_AT)) {
                    counts.merge(row.get(i), 1, Integer::sum);
                }
            }
            i++;
            int all = counts.values().stream().mapToInt(n -> n).sum();
            counts.forEach((v, n) -> traits.withObject("/" + trait).put(v, (double) n / all));
        }
        return model.put("horns_seen", own.size());
    }

    private static void write(Path file, ObjectNode entry) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, entry.toString());
    }
}
