package hornbook.shared.stock;

import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Lot;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What is said anew of a lot that is there; what is null stays as it is, what is empty is no longer said.
 *
 * @param kind id of the kind of part or supply
 * @param size as a person says it, {@code length 12; head 3.9}
 * @param supplier who it is bought from, by number or name
 * @param pack pieces in a pack; 0 where it is sold singly
 */
public record LotSaid(
        @Nullable String title,
        @Nullable String kind,
        @Nullable String size,
        @Nullable String thread,
        @Nullable String material,
        @Nullable String colour,
        @Nullable String supplier,
        @Nullable Integer pack,
        @Nullable String note) {
    private static final int LARGEST_PACK = 100_000;

    /** @throws BadInput where a size or thread cannot be read, the title is empty, or nothing would be otherwise */
    Lot on(Lot lot, SizeReader sizes) {
        String called = or(title, lot.title());
        Piece piece = Piece.said(
                called,
                or(kind, lot.item()),
                size == null ? lot.dimensions() : size,
                or(thread, Objects.requireNonNullElse(lot.thread(), "")),
                lot.state(),
                sizes);
        Lot now = new Lot(
                lot.id(),
                lot.drawer(),
                lot.place(),
                piece.kind(),
                piece.title(),
                lot.fitsMakes(),
                lot.fitsModels(),
                size == null ? lot.dimensions() : piece.dimensions(),
                piece.thread(),
                or(material, lot.material()),
                or(colour, lot.colour()),
                lot.state(),
                lot.count(),
                lot.reserve(),
                lot.keepsake(),
                supplier == null ? lot.supplier() : supplier.isEmpty() ? null : supplier,
                pack == null ? lot.pack() : pack(pack),
                or(note, lot.note()));
        if (now.equals(lot)) {
            throw new BadInput("nothing about " + lot.title() + " would be otherwise: say what is to change");
        }
        return now;
    }

    LotSaid from(String id) {
        return new LotSaid(title, kind, size, thread, material, colour, id, pack, note);
    }

    private static @Nullable Integer pack(int pieces) {
        if (pieces < 0 || pieces > LARGEST_PACK) {
            throw new BadInput(
                    pieces + " pieces are no pack: write how many are sold together, as 12, or 0 for singly");
        }
        return pieces == 0 ? null : Integer.valueOf(pieces);
    }

    private static String or(@Nullable String said, String stands) {
        return said == null ? stands : said.strip();
    }
}
