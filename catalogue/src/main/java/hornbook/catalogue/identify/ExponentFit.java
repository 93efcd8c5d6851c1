package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Model;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Horn;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How far each look should count: looks on one horn are not as independent as the reckoning takes them. Chosen by the
 * least log loss over horns made out by something other than this reckoning, each left out of what is learned.
 */
final class ExponentFit {
    static final double USUAL = 0.8;
    private static final int FEWEST = 10;

    private final Weighing weighing;
    private final Experience experience;

    ExponentFit(Weighing weighing, Experience experience) {
        this.weighing = weighing;
        this.experience = experience;
    }

    /** The exponent; the usual one unless another is better by one standard error of the difference. */
    double best() {
        List<Standing> standings = new ArrayList<>();
        List<Integer> truths = new ArrayList<>();
        List<String> ids = weighing.models().stream().map(Model::id).toList();
        for (Horn horn : experience.tests()) {
            if (!experience.looks(horn.id()).isEmpty()) {
                standings.add(weighing.stand(asCase(horn), 1));
                truths.add(ids.indexOf(horn.model()));
            }
        }
        return standings.size() < FEWEST ? USUAL : best(standings, truths);
    }

    private static double best(List<Standing> standings, List<Integer> truths) {
        double[] usual = losses(standings, truths, USUAL);
        double best = USUAL;
        double bestMean = mean(usual);
        for (int twentieths = 6; twentieths <= 20; twentieths++) {
            double[] own = losses(standings, truths, twentieths / 20.0);
            if (mean(own) < bestMean && better(own, usual)) {
                best = twentieths / 20.0;
                bestMean = mean(own);
            }
        }
        return best;
    }

    private static boolean better(double[] own, double[] usual) {
        double[] less = new double[own.length];
        for (int i = 0; i < own.length; i++) {
            less[i] = usual[i] - own[i];
        }
        double mean = mean(less);
        double squares = 0;
        for (double d : less) {
            squares += (d - mean) * (d - mean);
        }
        return mean > Math.sqrt(squares / (own.length - 1.0) / own.length);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double[] losses(List<Standing> standings, List<Integer> truths, double exponent) {
        double[] losses = new double[standings.size()];
        for (int i = 0; i < losses.length; i++) {
            Standing full = standings.get(i);
            List<Piece> pieces =
                    full.pieces().stream().map(p -> tempered(p, exponent)).toList();
            losses[i] = -Math.log(Scales.posterior(full.prior(), pieces)[truths.get(i)]);
        }
        return losses;
    }

    private static Piece tempered(Piece piece, double exponent) {
        if (piece.trait() == null) {
            return piece;
        }
        double[] logs = piece.logs().clone();
        for (int e = 0; e < logs.length; e++) {
            logs[e] *= exponent;
        }
        return new Piece(piece.answer(), piece.trait(), logs);
    }

    private Case asCase(Horn horn) {
        List<Seen> seen = new ArrayList<>(experience.looks(horn.id()));
        seen.add(new Seen.OneOf("family-member", List.of(horn.instrument())));
        SerialReading serial = serial(horn);
        return new Case(seen, serial, null, horn.model(), Objects.requireNonNull(horn.id()), null, false);
    }

    private static @org.jspecify.annotations.Nullable SerialReading serial(Horn horn) {
        try {
            return horn.serial().isBlank() ? null : SerialReading.of(horn.serial());
        } catch (BadInput e) {
            return null;
        }
    }
}
