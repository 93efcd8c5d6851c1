package hornbook.indexer.card;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Meaning;
import hornbook.catalogue.entry.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What people call an entry, by the words of the trade: {@code wobbly key} for a key that rocks sideways. */
final class Aliases {
    private final Map<String, List<String>> names = new HashMap<>();

    Aliases(Catalogue catalogue) {
        for (Word word : catalogue.all(Word.class).values()) {
            for (Meaning meaning : word.meanings()) {
                if (!meaning.kind().equals("misspelling")
                        && !String.valueOf(meaning.note()).contains("misspelt")) {
                    String entry = meaning.same().replaceFirst("=.*", "");
                    names.computeIfAbsent(entry, id -> new ArrayList<>()).add(word.title());
                }
            }
        }
    }

    List<String> of(String id) {
        return names.getOrDefault(id, List.of());
    }
}
