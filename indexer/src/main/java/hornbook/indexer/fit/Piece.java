package hornbook.indexer.fit;

import hornbook.shared.shop.Lot;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A piece of a lot, or the one in hand, as it is found.
 *
 * @param has what is stated of it, and what such a piece usually has
 * @param like a dimension that is as another until it is worked: the end of a rod, the tail of a spring
 * @param assumed names in {@code has} that nobody stated
 * @param lot none for the piece in hand
 */
record Piece(
        String id,
        String item,
        Craft craft,
        Map<String, Value> has,
        Map<String, String> like,
        Set<String> assumed,
        PieceClass of,
        Optional<Lot> lot) {
    Piece {
        has = Map.copyOf(has);
        like = Map.copyOf(like);
        assumed = Set.copyOf(assumed);
    }

    /** The value of a dimension; null where it is not known. */
    @Nullable
    Value value(String dimension) {
        Value own = has.get(dimension);
        String other = own == null ? like.get(dimension) : null;
        return other == null ? own : has.get(other);
    }
}
