package hornbook.shared.store;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;

/** A row as the table keeps it: its cells, whether it is retired, and the sum that stands with it. */
record Stored(List<String> cells, boolean retired, long sum) {
    private static final JsonMapper JSON = new JsonMapper();

    /** As the feed keeps it. */
    String json() {
        List<String> all = new ArrayList<>(cells);
        all.add(retired ? "1" : "0");
        return JSON.writeValueAsString(all);
    }

    /** Read back from the feed, which keeps the sum elsewhere. */
    static Stored of(String json) {
        List<String> all = List.of(JSON.readValue(json, String[].class));
        return new Stored(all.subList(0, all.size() - 1), all.getLast().equals("1"), 0);
    }
}
