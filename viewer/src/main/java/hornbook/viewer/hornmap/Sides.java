package hornbook.viewer.hornmap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Which cups are named left of the drawing and which right: as many on each side, and no line crosses another. */
final class Sides {
    private Sides() {}

    /** A cup at its place in the drawing. */
    record At(String cup, double x, double y) {}

    /** The cups named on each side, from the top down. */
    record Split(List<String> left, List<String> right) {}

    static Split of(List<At> cups) {
        List<At> byX = new ArrayList<>(cups);
        // The stack stands in one line: its cups go to both sides in turn, the highest first.
        byX.sort(Comparator.comparingDouble(At::x).thenComparingDouble(At::y));
        int half = (byX.size() + 1) / 2;
        return new Split(down(byX.subList(0, half)), down(byX.subList(half, byX.size())));
    }

    private static List<String> down(List<At> side) {
        return side.stream()
                .sorted(Comparator.comparingDouble(At::y))
                .map(At::cup)
                .toList();
    }
}
