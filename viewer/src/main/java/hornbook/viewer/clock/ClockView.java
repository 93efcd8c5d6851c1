package hornbook.viewer.clock;

import hornbook.shared.job.OnBench;
import hornbook.shared.job.Standing;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.pick.Pick;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the strip shows at one moment.
 *
 * @param bench the jobs on the bench with their clocks
 * @param who whose clock the keys are about
 * @param pick what is being chosen
 * @param job what a task is chosen for; empty while a job is
 * @param ask how long a forgotten clock really took
 * @param trouble what was refused
 */
record ClockView(
        List<OnBench> bench,
        String who,
        @Nullable Pick pick,
        String job,
        @Nullable Ask ask,
        @Nullable String trouble) {
    static final ClockView NOTHING = new ClockView(List.of(), "", null, "", null, null);

    /** A clock that runs, and on which job. */
    record Ticking(OnBench job, Standing.Clock clock) {}

    List<Ticking> ticking() {
        return bench.stream()
                .flatMap(job -> job.standing().clocks().stream().map(clock -> new Ticking(job, clock)))
                .toList();
    }

    Optional<Ticking> mine() {
        return ticking().stream().filter(t -> t.clock().who().equals(who)).findFirst();
    }

    Optional<OnBench> job(String id) {
        return bench.stream().filter(on -> on.id().equals(id)).findFirst();
    }

    ClockView with(List<OnBench> jobs, String hands) {
        return new ClockView(jobs, hands, pick, job, ask, trouble);
    }

    ClockView picking(Pick choice, String of) {
        return new ClockView(bench, who, choice, of, null, null);
    }

    ClockView asking(Ask question, String of) {
        return new ClockView(bench, who, null, of, question, null);
    }

    ClockView idle() {
        return new ClockView(bench, who, null, "", null, null);
    }

    ClockView troubled(String why) {
        return new ClockView(
                bench,
                who,
                pick == null ? null : pick.troubled(why),
                job,
                ask == null ? null : ask.troubled(why),
                pick == null && ask == null ? why : null);
    }

    boolean open() {
        return pick != null || ask != null;
    }
}
