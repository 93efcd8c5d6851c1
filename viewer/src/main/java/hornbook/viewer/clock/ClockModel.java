package hornbook.viewer.clock;

import hornbook.shared.job.Clocks;
import hornbook.shared.job.Jobs;
import hornbook.shared.job.OnBench;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.clock.ClockView.Ticking;
import hornbook.viewer.pick.Option;
import hornbook.viewer.pick.Pick;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Shown;
import hornbook.viewer.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Starts and stops clocks from anywhere, without a widget. A forgotten clock is asked about, never guessed. */
public final class ClockModel {
    private static final String STOP = "stop";
    private static final String MINUTES = "minutes";

    private final Work work;
    private final Jobs jobs;
    private final Clocks clocks;
    private final TaskChoice tasks;
    private final Latest asking;
    private final Shown<ClockView> shown = new Shown<>(ClockView.NOTHING, ClockView::troubled);
    private Runnable then = () -> {};

    public ClockModel(Work work, Jobs jobs, Clocks clocks, TaskChoice tasks) {
        this.work = work;
        this.jobs = jobs;
        this.clocks = clocks;
        this.tasks = tasks;
        this.asking = work.latest();
    }

    ClockView view() {
        return shown.now();
    }

    void onChange(Consumer<ClockView> draw) {
        shown.onChange(draw);
    }

    String title(String task) {
        return tasks.title(task);
    }

    private record Read(List<OnBench> bench, String who) {}

    private Read read() {
        List<OnBench> bench =
                jobs.onBench().stream().map(on -> on.calling(tasks::title)).toList();
        return new Read(bench, clocks.usual());
    }

    /** Asks again what runs. */
    public void refresh() {
        asking.ask(progress -> read(), shown.ends(read -> shown.show(view().with(read.bench(), read.who()))));
    }

    /** The key of the clock: opens the choice, or leaves it. */
    public void key() {
        if (view().open()) {
            leave();
            return;
        }
        asking.ask(progress -> read(), shown.ends(read -> {
            shown.show(view().with(read.bench(), read.who()));
            chooseJob();
        }));
    }

    private void chooseJob() {
        List<Option> options = new ArrayList<>();
        view().mine()
                .ifPresent(t -> options.add(new Option(
                        STOP,
                        "Stop: " + tasks.title(t.clock().task()),
                        t.job().id() + " " + t.job().model())));
        view().bench().forEach(on -> options.add(new Option(on.id(), on.model(), on.id() + "  " + on.complaint())));
        String title = view().bench().isEmpty() ? "No job is on the bench: take one in first." : "Clock: which job?";
        shown.show(view().picking(new Pick(title, options), ""));
    }

    /** Opens the choice of a task for that job. */
    public void chooseTask(String job) {
        work.read(progress -> read(), shown.ends(read -> {
            shown.show(view().with(read.bench(), read.who()));
            view().job(job).ifPresent(this::offerTasks);
        }));
    }

    private void offerTasks(OnBench job) {
        work.read(
                progress -> tasks.options(job),
                shown.ends(options -> shown.show(view().picking(
                                new Pick("Clock on " + job.model() + ", " + job.id() + ": what is worked on?", options),
                                job.id()))));
    }

    void choose(String value) {
        if (view().job().isEmpty()) {
            chooseJob(value);
        } else {
            start(view().job(), value);
        }
    }

    private void chooseJob(String value) {
        if (value.equals(STOP)) {
            stopMine();
        } else {
            view().job(value).ifPresent(this::offerTasks);
        }
    }

    /** Stops my clock, if one runs. */
    public void stopMine() {
        view().mine().ifPresent(ticking -> stop(ticking, this::leave));
    }

    /** Stops the clock of a job; whoever's it is. */
    public void stop(String job) {
        view().ticking().stream()
                .filter(t -> t.job().id().equals(job))
                .findFirst()
                .ifPresent(t -> stop(t, this::leave));
    }

    private void stop(Ticking ticking, Runnable after) {
        then = after;
        if (ticking.clock().forgotten()) {
            shown.show(view().asking(
                            new Ask(
                                    "The clock on "
                                            + tasks.title(ticking.clock().task()) + ", "
                                            + ticking.job().id() + ", has run since " + since(ticking)
                                            + ". How long did it really take?",
                                    "Write it down",
                                    Field.number(MINUTES, "Minutes", "")),
                            ticking.job().id()));
        } else {
            write(() -> clocks.stop(ticking.job().id(), ticking.clock().who(), null), after);
        }
    }

    private static String since(Ticking ticking) {
        return ticking.clock().since().toString().replace('T', ' ');
    }

    /** How long the forgotten clock took. */
    void answer(Answers answers) {
        String job = view().job();
        try {
            int minutes = answers.whole(MINUTES, "how long");
            view().ticking().stream()
                    .filter(t -> t.job().id().equals(job) && t.clock().forgotten())
                    .findFirst()
                    .ifPresent(t -> write(() -> clocks.stop(job, t.clock().who(), minutes), then));
        } catch (BadInput told) {
            shown.trouble(String.valueOf(told.getMessage()));
        }
    }

    private void start(String job, String task) {
        Runnable begin = () -> view().job(job).ifPresent(on -> {
            String who = view().who();
            write(() -> clocks.start(job, task, tasks.count(on, task), who), this::leave);
        });
        view().mine().filter(t -> t.clock().forgotten()).ifPresentOrElse(forgotten -> stop(forgotten, begin), begin);
    }

    private void write(Supplier<Deed> deed, Runnable after) {
        work.write(
                progress -> {
                    var _ = deed.get();
                    return read();
                },
                shown.ends(read -> {
                    shown.show(view().with(read.bench(), read.who()));
                    after.run();
                }));
    }

    /** Leaves the choice or question. */
    void leave() {
        shown.show(view().idle());
    }
}
