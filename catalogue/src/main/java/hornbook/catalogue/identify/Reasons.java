package hornbook.catalogue.identify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What each answer did to an entry's odds, all other answers given. */
final class Reasons {
    private final Standing standing;
    private final List<double[]> without;

    Reasons(Standing standing) {
        this.standing = standing;
        this.without = new ArrayList<>();
        for (Piece piece : standing.pieces()) {
            List<Piece> others =
                    standing.pieces().stream().filter(p -> p != piece).toList();
            without.add(Scales.posterior(standing.prior(), others));
        }
    }

    List<Reason> of(int entry) {
        List<Reason> reasons = new ArrayList<>();
        for (int i = 0; i < without.size(); i++) {
            double odds = odds(standing.posterior()[entry]) - odds(without.get(i)[entry]);
            reasons.add(new Reason(standing.pieces().get(i).answer(), odds));
        }
        reasons.sort(
                Comparator.comparingDouble((Reason r) -> -Math.abs(r.logOdds())).thenComparing(Reason::answer));
        return reasons;
    }

    private static double odds(double p) {
        double kept = Math.clamp(p, 1e-12, 1 - 1e-12);
        return Math.log(kept / (1 - kept));
    }
}
