package hornbook.viewer.paper.brief;

import java.util.List;

/**
 * How much of a brief is printed. What can ruin the horn or hurt somebody, the tick list and the hazards are printed
 * whole at every step; the rest grows short where two pages do not hold it.
 *
 * @param points size of the type
 * @param cut how far the rest is cut, 0 for not at all
 */
record BriefDetail(double points, int cut) {
    static final int MOST_CUT = 7;

    private static final List<Double> SIZES = List.of(6.5, 7.0, 7.5, 8.0, 8.5, 9.0);
    private static final int MANY_JOBS = 4;
    private static final int FEW_JOBS = 3;

    /** Sizes to try at a cut, the smallest first: type too small to read comes only once nothing is left to cut. */
    static List<Double> sizes(int cut) {
        return SIZES.subList(cut < 3 ? 2 : cut < MOST_CUT ? 1 : 0, SIZES.size());
    }

    /** How to handle each tool and supply, besides the hazards proper. */
    boolean handling() {
        return cut < 1;
    }

    /** A headline over each stage, rather than its name before each quirk. */
    boolean stageHeadlines() {
        return cut < 1;
    }

    /** A line for each place and for each thing not allowed, rather than running text. */
    boolean airy() {
        return cut < 2;
    }

    /** Rods, springs and cups key by key, besides pads and heights. */
    boolean keyByKey() {
        return cut < 3;
    }

    /** What each quirk does that is only possible and no stop, besides what to do. */
    boolean bites() {
        return cut < 4;
    }

    /** What to do about such quirks; else just the look that settles them. */
    boolean possibleInFull() {
        return cut < 5;
    }

    /** What to mind of each thing fetched. */
    boolean fetchNotes() {
        return cut < 6;
    }

    /** The drawings beside the stops. */
    boolean drawings() {
        return cut < MOST_CUT;
    }

    int jobs() {
        return switch (cut) {
            case 0, 1, 2 -> Integer.MAX_VALUE;
            case 3, 4 -> MANY_JOBS;
            default -> FEW_JOBS;
        };
    }
}
