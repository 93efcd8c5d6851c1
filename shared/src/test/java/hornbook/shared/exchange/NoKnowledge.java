package hornbook.shared.exchange;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** No entries at all: the books alone. */
public final class NoKnowledge implements KnowledgeFiles {
    @Override
    public List<String> names() {
        return List.of();
    }

    @Override
    public Incoming read(Path from) {
        return new Incoming(0, List.of(), List.of(), List.of(), Map.of());
    }

    @Override
    public void write(Path to, Map<String, List<String>> order) {}
}
