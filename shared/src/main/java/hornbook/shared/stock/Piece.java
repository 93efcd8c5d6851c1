package hornbook.shared.stock;

import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a piece in hand was found to be, before it has a place.
 *
 * @param kind id of the kind of part or supply, empty where it is not yet known
 * @param dimensions as in the books, {@code length=10.4 mm;head=3.4 mm}; empty where not measured
 * @param thread a designation, null where it has none or nobody gauged it
 */
public record Piece(
        String title,
        String kind,
        String dimensions,
        @Nullable String thread,
        String material,
        LotState state) {

    /**
     * As a person says it.
     *
     * @param size {@code 12 mm}, {@code length 12; diameter 2.74 mm}, or as in the books; may be empty
     * @param thread may be empty
     * @throws BadInput where size or thread cannot be read, or there is no title
     */
    public static Piece said(String title, String kind, String size, String thread, LotState state, SizeReader sizes) {
        if (title.isBlank()) {
            throw new BadInput("it has no name: say what it is, as “pivot screw, tapered”");
        }
        sizes.asSaid(size).refusal().ifPresent(why -> {
            throw new BadInput("size: " + why);
        });
        if (!thread.isBlank()) {
            sizes.threads(thread).refusal().ifPresent(why -> {
                throw new BadInput("thread: " + why);
            });
        }
        return new Piece(
                title.strip(),
                kind,
                sizes.asSaid(size).found().orElse(""),
                thread.isBlank() ? null : thread.strip(),
                "",
                state);
    }

    /** As a lot of its own, with nothing in it yet. */
    Lot lot(String id, Spot spot) {
        return new Lot(
                id,
                spot.drawer(),
                spot.place(),
                kind,
                title,
                List.of(),
                List.of(),
                dimensions,
                thread,
                material,
                "",
                state,
                Count.ZERO,
                false,
                false,
                null,
                null,
                "");
    }
}
