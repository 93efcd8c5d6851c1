package hornbook.viewer.jobs;

import java.util.Objects;
import java.util.function.Function;
import java.util.function.Supplier;

/** How an act begins. */
@FunctionalInterface
public interface Begin {
    /** @param view with a job, save for acts that need none */
    Step on(JobsView view);

    /** Whatever job is in view, or none. */
    static Begin anywhere(Supplier<Step> step) {
        return view -> step.get();
    }

    /** On the job in view. */
    static Begin onJob(Function<JobPage, Step> step) {
        return view -> step.apply(Objects.requireNonNull(view.page()));
    }
}
