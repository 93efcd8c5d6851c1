package hornbook.indexer.fit;

import hornbook.catalogue.entry.Model;
import java.util.Optional;

/**
 * What using a piece spoils, in minutes (parts-and-supplies section 2, from memory): nothing for what fits as it is or
 * is only worked so that it can be undone; otherwise its class; more for a long rod, a whole set, another make's part.
 *
 * @param model the horn's, where one is named
 */
record Charges(Optional<Model> model) {
    private static final double SET_BROKEN = 30;
    private static final double EACH_MM = 0.1;

    double of(Node node, int count, Aim aim) {
        Piece piece = node.piece;
        boolean reversible = node.reversible();
        double charge = reversible && !foreign(piece) ? 0 : count * tooLong(node);
        return charge + least(piece, reversible, count, aim);
    }

    /** Whatever is sawn off. */
    double least(Piece piece, boolean reversible, int count, Aim aim) {
        double charge = reversible && !foreign(piece) ? 0 : piece.of().charge();
        if (piece.value("set") instanceof Value.Word(String word) && word.equals("whole")) {
            charge += SET_BROKEN / count;
        }
        return count * (charge + own(piece, aim));
    }

    /** Of a make that is not the horn's. */
    boolean foreign(Piece piece) {
        return piece.of().makeSpecific()
                && model.isPresent()
                && piece.lot()
                        .filter(lot -> !lot.fitsMakes().contains(model.get().make())
                                && !lot.fitsModels().contains(model.get().id()))
                        .isPresent();
    }

    private static double tooLong(Node node) {
        Double free = node.piece.craft().fitting().longFree();
        boolean finished = node.piece.of() != PieceClass.BLANK;
        return free == null || !finished ? 0 : EACH_MM * Math.max(0, node.sawn - free);
    }

    /** A pad off its ruled size is charged though nothing is done to it. */
    private static double own(Piece piece, Aim aim) {
        String formula = piece.craft().fitting().charge();
        if (formula == null) {
            return 0;
        }
        double charge = FormulaReader.formula(formula).value(name -> {
            Value value = piece.value(name) == null ? aim.facts().get(name) : piece.value(name);
            return value instanceof Value.Amount(double mm, double _) ? mm : Double.NaN;
        });
        return Double.isNaN(charge) ? 0 : charge;
    }
}
