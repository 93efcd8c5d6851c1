package hornbook.indexer.card;

import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Cards of lots: what they are, what they fit, their sizes, and where they lie. */
final class LotCards {
    private static final float FITS = 3;
    private static final float IS = 6;
    private static final float FILED_AS = 1.5f;
    private static final Pattern HARMED = Pattern.compile(
            "\\b(torn|worn|bent|broken|cracked|chipped|damaged|stripped|perished|rusty)\\b", Pattern.CASE_INSENSITIVE);

    private final Names names;

    LotCards(Names names) {
        this.names = names;
    }

    Card card(Lot lot, @Nullable Spot spot) {
        Draft card = Card.draft("lot", lot.id(), lot.title())
                .say(Field.TEXT, lot.material())
                .say(Field.TEXT, lot.colour())
                .say(Field.TEXT, lot.state().name())
                .say(Field.TEXT, lot.note())
                .say(Field.TEXT, names.title(lot.supplier()))
                .concept(lot.supplier(), 1)
                .size(lot.thread());
        what(card, lot);
        lot.fitsMakes().forEach(make -> card.concept(make, FITS).say(Field.NAME, names.title(make)));
        lot.fitsModels().forEach(model -> card.concept(model, FITS).say(Field.TEXT, names.title(model)));
        dimensions(card, lot.dimensions());
        if (spot != null) {
            card.say(Field.LABEL, spot.label());
        }
        return card.standing(standing(lot)).shown(shown(lot, spot)).card();
    }

    /** Where the title names another thing than the one it is filed as, people read the title. */
    private void what(Draft card, Lot lot) {
        String titled = names.thing(lot.title()).orElse(lot.item());
        card.say(Field.NAME, names.title(titled))
                .say(Field.NAME, names.otherNames(titled))
                .concept(titled, IS);
        if (!titled.equals(lot.item())) {
            card.say(Field.TEXT, names.title(lot.item())).concept(lot.item(), FILED_AS);
        }
    }

    /** {@code diameter=2.38 mm;nose=ball}: sizes are sizes, words are words. */
    private static void dimensions(Draft card, String dimensions) {
        for (String piece : dimensions.split(";")) {
            int equals = piece.indexOf('=');
            if (equals > 0) {
                card.size(piece.substring(equals + 1)).say(Field.TEXT, piece.replace('=', ' '));
            }
        }
    }

    private static float standing(Lot lot) {
        if (lot.keepsake()) {
            return 0.5f;
        }
        if (lot.reserve()) {
            return 0.6f;
        }
        if (lot.count().none()) {
            return 0.65f;
        }
        boolean harmed = HARMED.matcher(lot.title() + " " + lot.note()).find();
        return harmed ? 0.9f : lot.state() == LotState.BLANK ? 0.95f : 1;
    }

    private static Shown shown(Lot lot, @Nullable Spot spot) {
        Shown.Heed heed = lot.keepsake()
                ? Shown.Heed.KEEPSAKE
                : lot.reserve() ? Shown.Heed.RESERVE : lot.count().none() ? Shown.Heed.NONE : Shown.Heed.OPEN;
        return new Shown(
                lot.lies(),
                spot == null ? null : spot.label(),
                spot == null ? null : spot.where(),
                lot.count().written(),
                null,
                spot == null ? null : spot.remark(),
                lot.item(),
                heed);
    }
}
