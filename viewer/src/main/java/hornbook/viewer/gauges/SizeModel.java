package hornbook.viewer.gauges;

import hornbook.shared.gauge.GaugeAnswer;
import hornbook.shared.measure.Reading;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.function.Consumer;
import java.util.function.Function;

/** A size in every form, without a widget. */
public final class SizeModel {
    private final Function<String, Reading<GaugeAnswer>> gauge;
    private final Latest asking;
    private Consumer<SizeView> listener = view -> {};
    private SizeView view = SizeView.NOTHING;

    /** @param gauge reads a size as written; asked beside the window */
    public SizeModel(Work work, Function<String, Reading<GaugeAnswer>> gauge) {
        this.gauge = gauge;
        this.asking = work.latest();
    }

    SizeView view() {
        return view;
    }

    void onChange(Consumer<SizeView> draw) {
        listener = draw;
        draw.accept(view);
    }

    void typed(String text) {
        if (text.isBlank()) {
            asking.cancel();
            show(SizeView.NOTHING);
            return;
        }
        asking.ask(
                progress -> gauge.apply(text),
                new Ends<>(
                        reading -> show(new SizeView(
                                text,
                                reading.found().orElse(null),
                                reading.refusal().orElse(null))),
                        thrown -> show(new SizeView(text, null, String.valueOf(thrown.getMessage())))));
    }

    private void show(SizeView now) {
        view = now;
        listener.accept(now);
    }
}
