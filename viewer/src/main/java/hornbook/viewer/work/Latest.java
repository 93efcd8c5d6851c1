package hornbook.viewer.work;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Questions of which only the newest matters, as with each keystroke: a new one cancels the one before. */
public final class Latest {
    private final Work work;

    @Nullable
    private Running before;

    Latest(Work work) {
        this.work = work;
    }

    /** Asks, and lets the question before be forgotten. To be called on the thread that shows. */
    public <A> void ask(Function<Progress, A> question, Ends<A> ends) {
        cancel();
        before = work.read(question, ends);
    }

    /** Lets the question under way be forgotten. */
    public void cancel() {
        if (before != null) {
            before.cancel();
            before = null;
        }
    }
}
