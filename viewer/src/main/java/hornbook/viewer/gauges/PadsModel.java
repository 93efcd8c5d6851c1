package hornbook.viewer.gauges;

import hornbook.shared.pads.PadAnswer;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.function.Consumer;
import java.util.function.Function;

/** Which pad goes where over all open jobs, without a widget. */
public final class PadsModel {
    private final Function<Boolean, PadAnswer> pads;
    private final Latest asking;
    private Consumer<PadsView> listener = view -> {};
    private PadsView view = PadsView.NOTHING;

    /** @param pads answers for all open jobs, with or without the reserve; asked beside the window */
    public PadsModel(Work work, Function<Boolean, PadAnswer> pads) {
        this.pads = pads;
        this.asking = work.latest();
    }

    PadsView view() {
        return view;
    }

    void onChange(Consumer<PadsView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** Asks again; the shop may have changed. */
    void refresh() {
        ask(view.reserve());
    }

    void takeFromReserve(boolean yes) {
        ask(yes);
    }

    private void ask(boolean reserve) {
        asking.ask(
                progress -> pads.apply(reserve),
                new Ends<>(
                        answer -> show(new PadsView(reserve, answer, null)),
                        thrown -> show(new PadsView(reserve, null, String.valueOf(thrown.getMessage())))));
    }

    private void show(PadsView now) {
        view = now;
        listener.accept(now);
    }
}
