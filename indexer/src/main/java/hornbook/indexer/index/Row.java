package hornbook.indexer.index;

import hornbook.indexer.card.Card;
import hornbook.indexer.card.Shown;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.lucene.util.BytesRef;
import org.jspecify.annotations.Nullable;

/**
 * What the index keeps of a card to show it as a hit.
 *
 * @param links ids of other cards it points to, with a share of its relevance
 */
public record Row(String kind, String id, String title, Shown shown, Map<String, Float> links) {
    private static final String BETWEEN = "\u0001";

    static BytesRef write(Card card) {
        Shown shown = card.shown();
        String links = card.links().entrySet().stream()
                .map(link -> link.getKey() + ":" + link.getValue())
                .collect(Collectors.joining(" "));
        return new BytesRef(String.join(
                BETWEEN,
                card.kind(),
                card.id(),
                card.title(),
                text(shown.drawer()),
                text(shown.label()),
                text(shown.where()),
                text(shown.onHand()),
                text(shown.day()),
                text(shown.remark()),
                text(shown.item()),
                shown.heed().name(),
                links));
    }

    static Row read(BytesRef bytes) {
        String all = new String(bytes.bytes, bytes.offset, bytes.length, StandardCharsets.UTF_8);
        String[] part = all.split(BETWEEN, -1);
        Shown shown = new Shown(
                absent(part[3]),
                absent(part[4]),
                absent(part[5]),
                absent(part[6]),
                absent(part[7]),
                absent(part[8]),
                absent(part[9]),
                Shown.Heed.valueOf(part[10]));
        return new Row(part[0], part[1], part[2], shown, links(part[11]));
    }

    private static Map<String, Float> links(String text) {
        if (text.isEmpty()) {
            return Map.of();
        }
        Map<String, Float> links = new LinkedHashMap<>();
        for (String link : text.split(" ")) {
            int colon = link.lastIndexOf(':');
            links.put(link.substring(0, colon), Float.valueOf(link.substring(colon + 1)));
        }
        return links;
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static @Nullable String absent(String text) {
        return text.isEmpty() ? null : text;
    }
}
