package hornbook.viewer.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How an outline is put on paper. Greys run from 0, black, to 1, the paper.
 *
 * @param width of the line, in millimetres
 * @param line grey of the line; none is drawn where absent
 * @param fill grey of the area; left open where absent
 * @param dash lengths of dashes and gaps, in millimetres; empty for a whole line
 */
public record Ink(
        double width, @Nullable Double line, @Nullable Double fill, List<Double> dash) {
    public Ink {
        dash = List.copyOf(dash);
    }

    public static Ink line(double width, double grey) {
        return new Ink(width, grey, null, List.of());
    }

    public static Ink area(double grey) {
        return new Ink(0, null, grey, List.of());
    }
}
