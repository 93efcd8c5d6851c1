package hornbook.shared.thread;

import hornbook.shared.measure.Length;
import hornbook.shared.measure.Limits;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.measure.Thread;
import hornbook.shared.thread.ThreadAnswer.LikelyThread;
import hornbook.shared.thread.ThreadAnswer.Stripped;
import hornbook.shared.thread.ThreadAnswer.TapDrill;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Answers which standard thread a screw or hole has. */
public final class WhichThread {
    /** Readings further off than this fit no thread of the table. */
    private static final double FITS = 4;
    /** From here on a reading is remarked on. */
    private static final double ODD = 2;

    private static final double SHOWN = 0.001;
    private static final double LIKELY = 0.05;
    private static final int DETAILED = 4;
    private static final int LISTED = 8;

    private final StandardSizes tables;
    private final Likelihood likelihood;

    public WhichThread(StandardSizes tables) {
        this.tables = tables;
        this.likelihood = new Likelihood(tables);
    }

    /** The answer; its {@code threads} are empty where no standard thread fits the readings. */
    public ThreadAnswer answer(ThreadQuestion question) {
        List<Candidate> all = likelihood.candidates(question);
        List<Candidate> shown = all.stream()
                .filter(candidate -> candidate.probability() >= SHOWN && candidate.deviations() <= FITS)
                .toList();
        List<Candidate> likely = shown.stream()
                .filter(candidate -> candidate.probability() >= LIKELY)
                .limit(DETAILED)
                .toList();
        Optional<Retap> retap = retap(question, likely);
        return new ThreadAnswer(
                shown.stream()
                        .map(candidate -> likelyThread(question, candidate, shown))
                        .toList(),
                shown.isEmpty() ? nearest(all) : List.of(),
                stripped(question, all),
                likely.stream().map(Candidate::limits).toList(),
                likely.stream().flatMap(one -> tapDrills(question, one)).toList(),
                retap.map(holes -> holes.up(LISTED)).orElse(List.of()),
                retap.map(holes -> holes.notUp(2 * LISTED)).orElse(List.of()),
                likely.stream()
                        .limit(1)
                        .flatMap(one -> Binding.of(one, all, LISTED).stream())
                        .toList(),
                Telling.between(likely, question.side()));
    }

    private Stream<TapDrill> tapDrills(ThreadQuestion question, Candidate likely) {
        return TapDrills.of(likely.thread(), question.percent(), tables.drills(), DETAILED).stream();
    }

    /** Nothing to clean up where no thread was recognised and no hole measured. */
    private Optional<Retap> retap(ThreadQuestion question, List<Candidate> likely) {
        Optional<Length> hole = question.side() == Side.HOLE
                ? Optional.of(question.diameter().nominal())
                // A screw says nothing of its hole: reckon as if nothing of the old thread were left.
                : likely.stream().findFirst().map(first -> first.thread().major());
        Optional<Double> pitch = question.pitch().map(PitchReading::mm);
        return hole.map(size -> new Retap(tables, size, pitch, question.wall(), question.through()));
    }

    private static List<Stripped> stripped(ThreadQuestion question, List<Candidate> all) {
        if (question.side() == Side.SCREW || question.pitch().isEmpty()) {
            return List.of();
        }
        PitchReading pitch = question.pitch().get();
        Length hole = question.diameter().nominal();
        return all.stream()
                .filter(one -> Math.abs(PitchGauge.deviations(
                                        pitch, one.thread().pitch().mm()))
                                <= ODD
                        && hole.compareTo(one.limits().holeMinor().most()) > 0
                        && hole.compareTo(one.thread().major()) <= 0)
                .map(one -> new Stripped(
                        one.thread().designation(), Math.rint(one.thread().percentInHole(hole))))
                .toList();
    }

    private static List<String> nearest(List<Candidate> all) {
        return all.stream()
                .sorted(Comparator.comparingDouble(Candidate::deviations))
                .limit(3)
                .map(candidate -> candidate.thread().designation())
                .toList();
    }

    private static LikelyThread likelyThread(ThreadQuestion question, Candidate candidate, List<Candidate> shown) {
        Thread thread = candidate.thread();
        return new LikelyThread(
                thread.designation(),
                thread.system().shown() + ", " + thread.series(),
                candidate.probability(),
                note(question, candidate, shown),
                thread.major(),
                Length.ofMillimetres(thread.pitch().mm()),
                thread.pitch().perInch(),
                thread.system().angle(),
                thread.provenance().source(),
                thread.provenance().sureness());
    }

    /** Where the readings lie off a good one by more than reading explains: they may do so in several ways, the worst counts. */
    private static Optional<String> off(ThreadQuestion question, Candidate candidate) {
        boolean screw = question.side() == Side.SCREW;
        Limits crest =
                screw ? candidate.limits().screwMajor() : candidate.limits().holeMinor();
        double read = question.diameter().nominal().mm();
        double doubt = ODD * question.diameter().sigma().orElse(Likelihood.GAUGE_SIGMA);
        boolean pitch = question.pitch()
                .filter(told -> Math.abs(PitchGauge.deviations(
                                told, candidate.thread().pitch().mm()))
                        > ODD)
                .isPresent();
        if (pitch) {
            return Optional.of("the pitch lies off it: read it again over ten turns");
        }
        if (read < crest.least().mm() - doubt) {
            return Optional.of(screw ? "thinner than a good one: worn, or another thread" : "narrower than a good one");
        }
        if (read > crest.most().mm() + doubt) {
            return Optional.of(screw ? "thicker than a good one" : "wider than a good one: worn, or another thread");
        }
        return Optional.empty();
    }

    private static Optional<String> note(ThreadQuestion question, Candidate candidate, List<Candidate> shown) {
        List<String> notes = new ArrayList<>();
        List<String> twins = shown.stream()
                .filter(other -> !other.equals(candidate) && other.twinOf(candidate))
                .map(other -> other.thread().designation())
                .toList();
        if (!twins.isEmpty()) {
            notes.add("same diameter and pitch as " + String.join(", ", twins) + ": only the angle tells");
        }
        if (candidate.deviations() > ODD) {
            off(question, candidate).ifPresent(notes::add);
        }
        if (candidate.thread().provenance().fromMemory()) {
            notes.add("row from memory");
        }
        if (question.pitch().isEmpty()) {
            notes.add("by diameter alone: read the pitch");
        }
        return notes.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", notes));
    }
}
