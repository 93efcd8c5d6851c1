package hornbook.shared.store;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Follows the chain of deeds from the first to the last, and adds up what they did to each kind. */
final class ChainCheck {
    private record Link(Deed deed, byte @Nullable [] chain, long sum, long afterSeq) {}

    private final Query query;
    private final Sums sums;
    private final List<Problem> found = new ArrayList<>();
    private final Map<String, Long> totals = new HashMap<>();
    private List<Link> links = List.of();
    private int at;
    private long lastSeq;
    private byte @Nullable [] before;
    private @Nullable Chain open;

    ChainCheck(Query query, Sums sums) {
        this.query = query;
        this.sums = sums;
    }

    List<Problem> problems() {
        links = query.rows(
                "select number, title, day, undo_of, undone_by, chain, sum, after_seq from deed order by number",
                r -> new Link(Deeds.read(r), r.getBytes(6), r.getLong(7), r.getLong(8)));
        for (Link link : links) {
            if (Deeds.sum(sums, link.deed) != link.sum) {
                broken(link.deed.number());
            }
        }
        begin();
        query.each(SecondStep.FEED_LINE.replace(" from feed", ", deed, kind, seq from feed") + "order by seq", row -> {
            long deed = row.getLong(4);
            while (open != null && links.get(at).deed.number() < deed) {
                end();
            }
            if (open != null && links.get(at).deed.number() == deed) {
                open.add(row.getBytes(1), row.getLong(2), row.getLong(3));
                totals.merge(row.getString(5), row.getLong(3) - row.getLong(2), Long::sum);
            } else {
                broken(deed);
            }
            lastSeq = row.getLong(6);
        });
        while (open != null) {
            end();
        }
        return found;
    }

    private void begin() {
        if (at == links.size()) {
            open = null;
            return;
        }
        Deed deed = links.get(at).deed;
        if (links.get(at).afterSeq != lastSeq) {
            broken(deed.number());
        }
        open = new Chain(before, deed.number(), deed.title(), deed.day().toString(), deed.undoOf());
    }

    private void end() {
        byte[] link = open == null ? new byte[0] : open.link();
        byte[] kept = links.get(at).chain;
        if (kept == null || !Arrays.equals(link, kept)) {
            broken(links.get(at).deed.number());
        }
        before = kept;
        at++;
        begin();
    }

    private void broken(long deed) {
        if (found.size() < Check.MOST_LINES) {
            found.add(Damage.of("is not as it was done", "deed " + deed));
        }
    }

    /** By kind, the sum over its rows as the deeds left them. */
    Map<String, Long> totals() {
        return totals;
    }
}
