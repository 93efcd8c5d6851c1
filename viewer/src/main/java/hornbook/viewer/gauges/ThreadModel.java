package hornbook.viewer.gauges;

import hornbook.shared.measure.Reading;
import hornbook.shared.thread.ThreadAnswer;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Which thread it is, without a widget. */
public final class ThreadModel {
    private final Supplier<Threads> threads;
    private final Latest asking;
    private Consumer<ThreadView> listener = view -> {};
    private ThreadView view = ThreadView.NOTHING;

    /** @param threads made at the first question, beside the window */
    public ThreadModel(Work work, Supplier<Threads> threads) {
        this.threads = threads;
        this.asking = work.latest();
    }

    ThreadView view() {
        return view;
    }

    void onChange(Consumer<ThreadView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** A field has changed. */
    void change(UnaryOperator<ThreadAsked> field) {
        ThreadAsked asked = field.apply(view.asked());
        if (asked.blank()) {
            asking.cancel();
            show(new ThreadView(asked, null, null, null));
            return;
        }
        view = new ThreadView(asked, view.answer(), view.overlay(), view.trouble());
        if (view.answer() == null && view.trouble() == null) {
            show(view);
        }
        asking.ask(
                progress -> answered(asked),
                new Ends<>(
                        this::show,
                        thrown -> show(new ThreadView(asked, null, null, String.valueOf(thrown.getMessage())))));
    }

    private ThreadView answered(ThreadAsked asked) {
        Threads tables = threads.get();
        Reading<ThreadAnswer> read = tables.which(asked.words());
        @Nullable ThreadAnswer answer = read.found().orElse(null);
        @Nullable
        Overlay overlay = answer == null ? null : tables.overlay(answer).orElse(null);
        return new ThreadView(
                asked, answer, overlay, read.refusal().map(Refusal::inFields).orElse(null));
    }

    private void show(ThreadView now) {
        view = now;
        listener.accept(now);
    }
}
