package hornbook.shared.pads;

import java.util.Comparator;
import java.util.List;

/** Something to decide: which look a horn gets, or which of several trays serves some cups. */
record Decision(List<Alternative> alternatives) {
    /**
     * One way to decide.
     *
     * @param placements what follows from it at once
     * @param then what is left to decide after it
     */
    record Alternative(List<Placement> placements, List<Decision> then) {
        Score least() {
            Score sum = Score.NOTHING;
            for (Placement placement : placements) {
                sum = sum.plus(placement.alone());
            }
            for (Decision decision : then) {
                sum = sum.plus(decision.least());
            }
            return sum;
        }
    }

    /** The promising first; of equals the order given stays. */
    Decision {
        if (alternatives.size() > 1) {
            alternatives = alternatives.stream()
                    .sorted(Comparator.comparing(Alternative::least))
                    .toList();
        }
    }

    /** No way can be worth more than this. */
    Score least() {
        return alternatives.getFirst().least();
    }

    boolean forced() {
        return alternatives.size() == 1 && alternatives.getFirst().then().isEmpty();
    }
}
