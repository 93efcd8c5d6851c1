package hornbook.shared.exchange;

import hornbook.shared.store.Books;
import hornbook.shared.store.Writing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** The order in which files of knowledge spoke of entries, kept so that an export gives the same bytes again. */
final class FileOrder {
    static final String SETTING = "exchange.order";
    private static final JsonMapper JSON = new JsonMapper();
    private static final TypeReference<Map<String, List<String>>> TYPE = new TypeReference<>() {};

    private FileOrder() {}

    static Map<String, List<String>> of(Books books) {
        return books.setting(SETTING).map(json -> JSON.readValue(json, TYPE)).orElse(Map.of());
    }

    /** New files and ids come after those known. */
    static void add(Writing writing, Books books, Map<String, List<String>> more) {
        Map<String, List<String>> all = new LinkedHashMap<>(of(books));
        more.forEach((file, ids) -> all.merge(
                file,
                ids,
                (known, found) -> java.util.stream.Stream.concat(known.stream(), found.stream())
                        .distinct()
                        .toList()));
        if (!more.isEmpty() && !all.equals(of(books))) {
            writing.setting(SETTING, JSON.writeValueAsString(all));
        }
    }
}
