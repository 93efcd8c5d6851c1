package hornbook.viewer.card;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Gathers the blocks of a card; what says nothing is left out. */
final class Blocks {
    private final List<Block> list = new ArrayList<>();

    List<Block> list() {
        return list;
    }

    Blocks text(String heading, @Nullable String words) {
        if (words != null && !words.isBlank()) {
            list.add(new Block.Text(heading, words.strip()));
        }
        return this;
    }

    Blocks text(String heading, Collection<String> words) {
        return text(heading, String.join(", ", words));
    }

    Blocks heed(@Nullable String words, boolean stop) {
        if (words != null && !words.isBlank()) {
            list.add(new Block.Heed(words, stop));
        }
        return this;
    }

    Blocks links(String heading, List<Block.Link> links) {
        if (!links.isEmpty()) {
            list.add(new Block.Links(heading, links));
        }
        return this;
    }

    Blocks add(Block block) {
        list.add(block);
        return this;
    }
}
