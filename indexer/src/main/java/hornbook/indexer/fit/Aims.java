package hornbook.indexer.fit;

import hornbook.indexer.fit.Want.Between;
import hornbook.shared.shop.BadInput;
import java.util.LinkedHashMap;
import java.util.Map;

/** Turns a question into what one piece has to become: a clearance asked is a bore, once the rod is known. */
final class Aims {
    private final Asked asked;
    private final Threads threads;

    Aims(Asked asked, Threads threads) {
        this.asked = asked;
        this.threads = threads;
    }

    Threads threads() {
        return threads;
    }

    /**
     * @throws BadInput where a derived size is asked without what it is reckoned from
     */
    Aim of(Piece piece) {
        Map<String, Want> wants = new LinkedHashMap<>();
        asked.wants().forEach((name, want) -> {
            String derived = piece.craft().fitting().derived().get(name);
            if (derived != null && want instanceof Between between) {
                derive(name, FormulaReader.formula(derived), between, piece, wants);
            } else {
                wants.put(name, want);
            }
        });
        piece.craft().fitting().wants().forEach((name, text) -> {
            if (!wants.containsKey(name)) {
                wants.put(name, always(text));
            }
        });
        return new Aim(wants, asked.facts(), asked.count(), threads);
    }

    private static Want always(String text) {
        return Pieces.value(text, name -> null) instanceof Value.Amount(double mm, double _)
                ? new Between(mm, mm)
                : new Want.Among(java.util.List.of(text));
    }

    private void derive(String name, Formula formula, Between want, Piece piece, Map<String, Want> into) {
        String dimension = formula.names().stream()
                .filter(n -> !piece.craft().on(n).isEmpty())
                .findFirst()
                .orElseThrow(() -> new BadInput("“" + name + "” cannot be worked on this kind: ask for its own sizes"));
        double none = at(formula, dimension, 0, piece, name);
        double slope = at(formula, dimension, 1, piece, name) - none;
        double one = (want.low() - none) / slope;
        double other = (want.high() - none) / slope;
        into.put(dimension, new Between(Math.min(one, other), Math.max(one, other)));
    }

    private double at(Formula formula, String dimension, double mm, Piece piece, String name) {
        double value = formula.value(n -> {
            Value known = piece.value(n) == null ? asked.facts().get(n) : piece.value(n);
            return n.equals(dimension) ? mm : known instanceof Value.Amount(double k, double _) ? k : Double.NaN;
        });
        if (Double.isNaN(value)) {
            throw new BadInput("“" + name + "” is reckoned from " + String.join(" and ", formula.names())
                    + ": give the one that is not worked, as --with rod=2.743");
        }
        return value;
    }
}
