package hornbook.viewer.honesty;

import hornbook.catalogue.estimate.Honesty;
import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Progress;
import hornbook.viewer.work.Reached;
import hornbook.viewer.work.Running;
import hornbook.viewer.work.Shown;
import hornbook.viewer.work.Work;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What the pane knows and does, without a widget. It takes some seconds for ten years, tells how far it is, and stops. */
public final class HonestyModel {
    private static final Reached BEGUN = new Reached(0, 0, "reading the clocks");

    private final Work work;
    private final Supplier<Honesty> honesty;
    private final Shown<HonestyView> shown = new Shown<>(HonestyView.NOTHING, HonestyView::saying);
    private @Nullable Running running;

    /** @param honesty asked each time, for jobs may have been closed */
    public HonestyModel(Work work, Supplier<Honesty> honesty) {
        this.work = work;
        this.honesty = honesty;
    }

    HonestyView view() {
        return shown.now();
    }

    void onChange(Consumer<HonestyView> draw) {
        shown.onChange(draw);
    }

    /** Reckons it; what is under way goes on. */
    public void ask() {
        if (running == null || running.over() || running.cancelled()) {
            shown.show(view().reaching(BEGUN));
            Ends<HonestyAnswer> ends = shown.ends(answer -> shown.show(view().with(answer)));
            running = work.read(
                    this::reckoned,
                    new Ends<>(ends.answered(), ends.failed(), reached -> shown.show(view().reaching(reached))));
        }
    }

    private HonestyAnswer reckoned(Progress progress) {
        return honesty.get().answer((done, total, doing) -> {
            progress.stopIfCancelled();
            progress.reached(done, total, doing);
        });
    }

    /** Lets it be, where it is under way. */
    public void stop() {
        if (view().reached() != null && running != null) {
            running.cancel();
            shown.show(view().saying("Stopped. Ask again when there is time."));
        }
    }
}
