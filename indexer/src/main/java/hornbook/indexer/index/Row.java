package hornbook.indexer.index;

import hornbook.indexer.card.Card;
import hornbook.indexer.card.Shown;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.lucene.util.BytesRef;
import org.jspecify.annotations.Nullable;

/** What the index keeps of a card to show it as a hit. Each piece is read when it is asked for: most rows are not shown. */
public final class Row {
    private static final char BETWEEN = '\u0001';
    private static final int PIECES = 12;
    private static final float SHARES = 1000;

    private final byte[] bytes;
    /** Where each piece begins; one more at the end. */
    private final int[] starts = new int[PIECES + 1];

    private final @Nullable String[] read = new @Nullable String[PIECES];

    private Row(byte[] bytes) {
        this.bytes = bytes;
        int piece = 1;
        for (int i = 0; i < bytes.length && piece < PIECES; i++) {
            if (bytes[i] == BETWEEN) {
                starts[piece++] = i + 1;
            }
        }
        Arrays.fill(starts, piece, PIECES + 1, bytes.length + 1);
    }

    static BytesRef write(Card card) {
        Shown shown = card.shown();
        String links = card.links().entrySet().stream()
                .map(link -> link.getKey() + ":" + Math.round(SHARES * link.getValue()))
                .collect(Collectors.joining(" "));
        return new BytesRef(String.join(
                String.valueOf(BETWEEN),
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

    /** The row that {@link #write} wrote; keeps its own copy. */
    static Row read(BytesRef written) {
        return new Row(Arrays.copyOfRange(written.bytes, written.offset, written.offset + written.length));
    }

    public String kind() {
        return piece(0);
    }

    public String id() {
        return piece(1);
    }

    public String title() {
        return piece(2);
    }

    /** The day it happened, as year, month, day; empty where it has none. */
    public String day() {
        return piece(7);
    }

    /** What sort of thing lies there; empty where that says nothing. */
    public String item() {
        return piece(9);
    }

    public Shown.Heed heed() {
        return Shown.Heed.valueOf(piece(10));
    }

    public Shown shown() {
        return new Shown(present(3), present(4), present(5), present(6), present(7), present(8), present(9), heed());
    }

    /** Ids of other cards it points to, with a share of its relevance. */
    public Map<String, Float> links() {
        String text = piece(11);
        if (text.isEmpty()) {
            return Map.of();
        }
        Map<String, Float> links = new LinkedHashMap<>();
        for (String link : text.split(" ")) {
            int colon = link.lastIndexOf(':');
            links.put(link.substring(0, colon), Integer.parseInt(link, colon + 1, link.length(), 10) / SHARES);
        }
        return links;
    }

    private String piece(int number) {
        String known = read[number];
        if (known == null) {
            int from = starts[number];
            known = new String(bytes, from, starts[number + 1] - 1 - from, StandardCharsets.UTF_8);
            read[number] = known;
        }
        return known;
    }

    private @Nullable String present(int number) {
        return starts[number + 1] - starts[number] == 1 ? null : piece(number);
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }
}
