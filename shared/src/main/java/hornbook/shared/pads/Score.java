package hornbook.shared.pads;

import java.util.Comparator;

/**
 * What a way of filling cups is worth, least first: cups left empty, then half steps off the ruled size, then how far
 * the sizes are off their cups in all, micrometres.
 */
record Score(int empty, int halfSteps, long off) implements Comparable<Score> {
    static final Score NOTHING = new Score(0, 0, 0);

    private static final Comparator<Score> ORDER = Comparator.comparingInt(Score::empty)
            .thenComparingInt(Score::halfSteps)
            .thenComparingLong(Score::off);

    Score plus(Score other) {
        return new Score(empty + other.empty, halfSteps + other.halfSteps, off + other.off);
    }

    @Override
    public int compareTo(Score other) {
        return ORDER.compare(this, other);
    }
}
