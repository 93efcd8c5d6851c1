package hornbook.viewer.work;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;

/**
 * Work under way. Cancelling asks it to stop and silences it; it never interrupts the thread, as that would close the
 * files of an index or a database under everybody else.
 */
public final class Running implements Progress {
    private final AtomicBoolean cancelled = new AtomicBoolean();
    private final AtomicBoolean over = new AtomicBoolean();
    private final Executor show;
    private final Ends<?> ends;

    Running(Executor show, Ends<?> ends) {
        this.show = show;
        this.ends = ends;
    }

    public void cancel() {
        cancelled.set(true);
    }

    @Override
    public boolean cancelled() {
        return cancelled.get();
    }

    /** Whether it ended: answered, failed or stopped. */
    public boolean over() {
        return over.get();
    }

    @Override
    public void reached(long done, long total, String doing) {
        tell(() -> ends.reached().accept(new Reached(done, total, doing)));
    }

    <A> void run(Function<Progress, A> question, Ends<A> listeners) {
        try {
            stopIfCancelled();
            A answer = question.apply(this);
            end(() -> listeners.answered().accept(answer));
        } catch (CancellationException stopped) {
            over.set(true);
        } catch (RuntimeException | Error thrown) {
            end(() -> listeners.failed().accept(thrown));
        }
    }

    private void end(Runnable last) {
        tell(() -> {
            over.set(true);
            last.run();
        });
    }

    private void tell(Runnable news) {
        show.execute(() -> {
            if (!cancelled()) {
                news.run();
            }
        });
    }
}
