package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.SerialRange;
import java.util.List;

/** What a serial number tells about every entry: inside its runs, off them, and by its letters. */
final class SerialEvidence {
    private static final double OFF = 0.05;
    private static final double ODD_LETTERS = 0.05;
    private static final int LETTERS = 27;

    private final List<Model> models;
    private final double span;

    SerialEvidence(List<Model> models) {
        this.models = models;
        this.span = models.stream()
                .flatMap(m -> m.serialRanges().stream())
                .mapToLong(SerialRange::to)
                .max()
                .orElse(1_000_000);
    }

    /**
     * Chance of that reading on a horn of each entry, and of none.
     *
     * @param plain as reference figures are made: letters say nothing about a horn that no entry describes. Else they
     *     count there as among all entries together, as any trait does.
     */
    double[] likelihoods(SerialReading read, boolean plain) {
        double[] chances = new double[models.size() + 1];
        double letters = 0;
        int stated = 0;
        for (int e = 0; e < models.size(); e++) {
            Model model = models.get(e);
            chances[e] = number(model, read);
            if (!model.serialLetters().isEmpty()) {
                double own = letters(model, read);
                chances[e] *= own;
                letters += own;
                stated++;
            }
        }
        double background = (letters + 1.0 / LETTERS) / (stated + 1);
        for (int e = 0; e < models.size() && !plain; e++) {
            chances[e] *= models.get(e).serialLetters().isEmpty() ? background : 1;
        }
        chances[models.size()] = 1 / span * (plain || stated == 0 ? 1 : background);
        return chances;
    }

    private double number(Model model, SerialReading read) {
        if (model.serialRanges().isEmpty()) {
            return 1 / span;
        }
        double width = 0;
        double inside = 0;
        for (SerialRange range : model.serialRanges()) {
            width += range.to() - range.from() + 1;
            inside += read.within(range.from(), range.to());
        }
        inside = Math.min(1, inside);
        return inside * (1 - OFF) / width + (1 - inside) * OFF / span;
    }

    private static double letters(Model model, SerialReading read) {
        double share = model.serialLetters().getOrDefault(read.letters(), 0.0);
        return (1 - ODD_LETTERS) * share + ODD_LETTERS / LETTERS;
    }
}
