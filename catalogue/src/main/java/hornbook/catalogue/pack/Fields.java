package hornbook.catalogue.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Two forms of an entry, side by side. */
record Fields(JsonNode here, JsonNode theirs) {
    private static final int LONGEST = 200;

    List<Difference.Field> differing() {
        Set<String> names = new TreeSet<>(here.propertyNames());
        names.addAll(theirs.propertyNames());
        List<Difference.Field> differing = new ArrayList<>();
        for (String name : names) {
            JsonNode ours = here.get(name);
            JsonNode other = theirs.get(name);
            if (ours == null || !ours.equals(other)) {
                differing.add(new Difference.Field(name, written(ours), written(other)));
            }
        }
        return differing;
    }

    private static String written(@Nullable JsonNode value) {
        String text = value == null ? "" : value.toString();
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
    }
}
