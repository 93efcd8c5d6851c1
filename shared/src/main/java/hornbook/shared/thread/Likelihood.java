package hornbook.shared.thread;

import hornbook.shared.measure.StandardSizes;
import hornbook.shared.measure.Thread;
import hornbook.shared.measure.ThreadLimits;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The probability of each thread of the table. Prior equal, half for withdrawn and listed-special threads; twins share
 * theirs equally unless the angle was looked at.
 */
final class Likelihood {
    /** Standard uncertainty of a diameter whose doubt is not stated, mm. */
    static final double GAUGE_SIGMA = 0.02;
    /** Standard uncertainty of an angle judged by a form leaf, degrees. */
    private static final double FORM_SIGMA = 2;

    private record Known(Thread thread, ThreadLimits limits, List<Integer> twins) {}

    private final List<Known> known;

    Likelihood(StandardSizes tables) {
        List<Thread> threads = tables.threads().threads();
        this.known = threads.stream()
                .map(thread -> new Known(
                        thread,
                        tables.limits().of(thread),
                        IntStream.range(0, threads.size())
                                .filter(other -> Twins.are(thread, threads.get(other)))
                                .boxed()
                                .toList()))
                .toList();
    }

    /** Every thread of the table, likeliest first; among equals the current standards come first. */
    List<Candidate> candidates(ThreadQuestion question) {
        double[] weights =
                known.stream().mapToDouble(one -> weight(question, one)).toArray();
        double[] off =
                known.stream().mapToDouble(one -> deviations(question, one)).toArray();
        double[] shared = known.stream()
                .mapToDouble(one -> twins(one, weights).average().orElseThrow() * form(question, one.thread()))
                .toArray();
        double all = Math.max(DoubleStream.of(shared).sum(), Double.MIN_NORMAL);
        return IntStream.range(0, shared.length)
                .mapToObj(at -> candidate(known.get(at), shared[at] / all, off))
                .sorted(Comparator.comparingDouble((Candidate one) -> -Math.rint(one.probability() * 1e9))
                        .thenComparing(one -> one.thread().rare()))
                .toList();
    }

    /** Twins stand or fall together: old holes were drilled to no standard of theirs. */
    private static Candidate candidate(Known one, double probability, double[] off) {
        return new Candidate(
                one.thread(), one.limits(), probability, twins(one, off).min().orElseThrow());
    }

    private static DoubleStream twins(Known one, double[] of) {
        return one.twins().stream().mapToDouble(twin -> of[twin]);
    }

    private static double weight(ThreadQuestion question, Known one) {
        double prior = one.thread().rare() ? 0.5 : 1;
        double pitch = question.pitch()
                .map(reading ->
                        PitchGauge.likelihood(reading, one.thread().pitch().mm()))
                .orElse(1.0);
        return prior
                * crest(question, one).density(question.diameter().nominal().mm())
                * pitch;
    }

    private static double deviations(ThreadQuestion question, Known one) {
        double across =
                crest(question, one).deviations(question.diameter().nominal().mm());
        double along = question.pitch()
                .map(reading ->
                        PitchGauge.deviations(reading, one.thread().pitch().mm()))
                .orElse(0.0);
        return Math.hypot(across, along);
    }

    private static Crest crest(ThreadQuestion question, Known one) {
        return Crest.of(
                one.limits(), question.side(), question.diameter().sigma().orElse(GAUGE_SIGMA));
    }

    private static double form(ThreadQuestion question, Thread thread) {
        double off = question.form()
                .map(seen -> (seen - thread.system().angle()) / FORM_SIGMA)
                .orElse(0.0);
        return Math.exp(-off * off / 2);
    }
}
