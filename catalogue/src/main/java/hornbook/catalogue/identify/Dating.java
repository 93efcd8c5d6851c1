package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Normal;
import hornbook.catalogue.entry.SerialAnchor;
import hornbook.catalogue.entry.SerialRange;
import hornbook.catalogue.entry.Years;
import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** When a horn was made: chances over years, from the anchors around its number, else from its model's years. */
final class Dating {
    private static final int FIRST = 1840;
    private static final int LAST = 2100;
    private static final double TAIL = 0.1;
    /** A number is "believed reached" in a year: half a year of doubt, and a tenth of the stretch between anchors. */
    private static final double DOUBT = 0.5;

    private static final double DOUBT_OF_GAP = 0.1;
    private static final int PIECES = 100;

    private final @Nullable SerialReading read;

    Dating(@Nullable SerialReading read) {
        this.read = read;
    }

    /** Chances by year from 1840; all nought where nothing is known. */
    double[] years(Model model) {
        double[] years = new double[LAST - FIRST];
        double left = 1;
        if (read != null && read.told() && model.serialAnchors().size() > 1) {
            left = Math.max(0, 1 - numbered(model, read, years));
        }
        Years own = model.years();
        if (left > 1e-9 && own != null && own.from() != null) {
            int to = own.to() == null ? own.from() : own.to();
            for (int y = own.from(); y <= to; y++) {
                years[y - FIRST] += left / (to - own.from() + 1);
            }
        }
        return years;
    }

    private static double numbered(Model model, SerialReading read, double[] years) {
        double[] x =
                model.serialAnchors().stream().mapToDouble(SerialAnchor::serial).toArray();
        double[] y =
                model.serialAnchors().stream().mapToDouble(SerialAnchor::year).toArray();
        Interpolation curve = Interpolation.fitting(x, y);
        double inside = 0;
        for (SerialRange range : model.serialRanges()) {
            double step = Math.max(1, (range.to() - range.from() + 1.0) / PIECES);
            for (double from = range.from(); from <= range.to(); from += step) {
                long last = Math.min(range.to(), (long) (from + step) - 1);
                double share = read.within((long) from, last);
                if (share > 0) {
                    inside += share;
                    spread(curve, exact(read, (from + last) / 2), share, years);
                }
            }
        }
        return inside;
    }

    private static double exact(SerialReading read, double middle) {
        return read.digits().contains("?") ? middle : Double.parseDouble(read.digits());
    }

    private static void spread(Interpolation curve, double number, double share, double[] years) {
        Normal around = new Normal(curve.at(number), DOUBT + DOUBT_OF_GAP * curve.gap(number));
        int middle = (int) around.mean();
        for (int y = middle - 20; y <= middle + 20; y++) {
            years[Math.clamp(y - FIRST, 0, years.length - 1)] +=
                    share * (Bell.below(y + 1, around) - Bell.below(y, around));
        }
    }

    /** The years that hold four in five, a tenth cut off at either end; empty where nothing is known. */
    static Optional<YearSpan> span(double[] years) {
        double all = Arrays.stream(years).sum();
        if (all <= 0) {
            return Optional.empty();
        }
        int from = 0;
        int to = years.length - 1;
        for (double below = years[from]; below <= TAIL * all; below += years[from]) {
            from++;
        }
        for (double above = years[to]; above <= TAIL * all; above += years[to]) {
            to--;
        }
        return Optional.of(new YearSpan(FIRST + from, FIRST + to));
    }
}
