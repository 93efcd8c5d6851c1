package hornbook.indexer.fit;

import hornbook.indexer.fit.Stretches.Stretch;
import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.List;

/**
 * What an operation can do to a size: where it may end, and by how much it changes it for how many minutes.
 *
 * @param ends that do not overlap
 */
record Reach(List<Between> ends, List<Stroke> strokes) {
    Reach {
        ends = List.copyOf(ends);
        strokes = List.copyOf(strokes);
    }

    /** Only at these sizes: those of drills, reamers or punches that are there. */
    Reach at(List<Double> sizes) {
        List<Between> points = sizes.stream()
                .filter(mm -> ends.stream().anyMatch(end -> end.low() <= mm && mm <= end.high()))
                .map(mm -> new Between(mm, mm))
                .toList();
        return new Reach(points, strokes);
    }

    /** The same for no minutes. */
    Reach free() {
        return new Reach(
                ends,
                strokes.stream()
                        .map(stroke -> new Stroke(stroke.larger(), stroke.least(), stroke.most(), 0))
                        .toList());
    }

    /**
     * From where it leads on, for how much.
     *
     * @param after what is still to be spent once it is done
     * @param stock that it has to take at least, mm
     */
    List<Stretch> before(Stretches after, double stock) {
        List<Stretch> begun = new ArrayList<>();
        List<Stretch> into = after.within(ends).all();
        for (Stroke any : strokes) {
            Stroke stroke = any.taking(stock);
            if (!stroke.empty()) {
                for (Stretch end : into) {
                    Between from = stroke.begun(end.low(), end.high());
                    begun.add(new Stretch(Math.max(0, from.low()), from.high(), end.minutes() + stroke.minutes()));
                }
            }
        }
        return begun;
    }
}
