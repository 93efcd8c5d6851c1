package hornbook.indexer.fit;

import java.util.Optional;

/** What a lot would take if a tool of the shop that is lent, missing or broken were there and good. */
final class WithTool {
    /** Minutes; less is not worth saying. */
    private static final double WORTH = 0.5;

    private final Aims aims;
    private final ShopRack rack;
    private final Charges charges;
    private final Minutes minutes;

    WithTool(Aims aims, ShopRack rack, Charges charges, Minutes minutes) {
        this.aims = aims;
        this.rack = rack;
        this.charges = charges;
        this.minutes = minutes;
    }

    /** A cheaper plan for the same piece. */
    Optional<CheaperWith> than(Plan plan) {
        Piece piece = plan.end().piece;
        Aim aim = aims.of(piece);
        if (plan.end().steps.isEmpty() || !rack.wants(piece.craft(), aim)) {
            return Optional.empty();
        }
        return new Search(aim, rack.mended(), charges, minutes, piece)
                .best()
                .filter(better -> better.total() + WORTH <= plan.total())
                .map(this::cheaper);
    }

    private CheaperWith cheaper(Plan plan) {
        return new CheaperWith(
                rack.lacks(plan),
                Shown.toPlaces(plan.minutes(), 2),
                Shown.toPlaces(plan.charge(), 2),
                Shown.toPlaces(plan.total(), 2),
                plan.work());
    }
}
