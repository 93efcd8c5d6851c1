package hornbook.indexer.card;

import hornbook.catalogue.entry.SerialRange;
import java.util.List;
import java.util.Map;

/**
 * What of one record can be found.
 *
 * @param kind as {@code find} names it
 * @param texts what it says, field by field
 * @param concepts what it is or stands beside (ids of entries, {@code trait=value}), with weight
 * @param sizes writings of its own sizes, to be read as sizes even where they are bare
 * @param links ids of other cards it points to, with a share of its relevance from 0 to 1
 * @param runs runs of serial numbers
 * @param standing 0 to 1: what stands higher is shown first when all else is equal
 */
public record Card(
        String kind,
        String id,
        String title,
        Map<Field, List<String>> texts,
        Map<String, Float> concepts,
        List<String> sizes,
        Map<String, Float> links,
        List<SerialRange> runs,
        float standing,
        Shown shown) {

    /** A card of that kind, to be filled in. */
    public static Draft draft(String kind, String id, String title) {
        return new Draft(kind, id, title);
    }
}
