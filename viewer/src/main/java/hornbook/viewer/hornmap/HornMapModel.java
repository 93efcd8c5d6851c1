package hornbook.viewer.hornmap;

import hornbook.catalogue.hornmap.CupLine;
import hornbook.catalogue.hornmap.HornMap;
import hornbook.shared.job.KeyField;
import hornbook.shared.pads.Assignment;
import hornbook.shared.store.Deed;
import hornbook.viewer.widget.Words;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Shown;
import hornbook.viewer.work.Work;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What the screen Horn map knows and does, without a widget. */
public final class HornMapModel {
    private final Work work;
    private final HornsToMap horns;
    private final Entering entering;
    private final Latest asking;
    private final Shown<HornMapView> shown = new Shown<>(HornMapView.NOTHING, HornMapView::troubled);
    private String wanted = "";

    public HornMapModel(Work work, HornsToMap horns, Entering entering) {
        this.work = work;
        this.horns = horns;
        this.entering = entering;
        this.asking = work.latest();
    }

    HornMapView view() {
        return shown.now();
    }

    void onChange(Consumer<HornMapView> draw) {
        shown.onChange(draw);
    }

    /** Shows a horn of the shop. */
    public void show(String horn) {
        wanted = horn;
        asking.ask(progress -> read(horn), shown.ends(this::came));
    }

    private record Read(@Nullable HornMap map, Tray tray) {}

    private Read read(String horn) {
        HornMap map = horns.map(horn).orElse(null);
        return new Read(map, map == null || map.job() == null ? Tray.NOTHING : horns.pads(map.job()));
    }

    private void came(Read read) {
        wanted = read.map() == null ? "" : read.map().horn();
        shown.show(
                read.map() == null
                        ? view().troubled("There is no such horn any more.")
                        : view().with(read.map(), read.tray()));
    }

    /** Asks again, as the shop may have changed. */
    void refresh() {
        if (wanted.isEmpty()) {
            asking.ask(progress -> horns.bench(), shown.ends(bench -> shown.show(view().withBench(bench))));
        } else {
            show(wanted);
        }
    }

    /** Puts the horn away, so that another can be chosen; whether there was one. */
    boolean putAway() {
        if (view().map() == null) {
            return false;
        }
        wanted = "";
        shown.show(view().with(null, Tray.NOTHING));
        refresh();
        return true;
    }

    void choose(String cup) {
        shown.show(view().choosing(cup));
    }

    void step(int by) {
        shown.show(view().choosing(view().step(by)));
    }

    void on(Layer layer) {
        shown.show(view().on(layer));
    }

    void on(KeyField field) {
        shown.show(view().on(field));
    }

    /** Writes down what was typed at the chosen cup, and goes on to the next; nothing typed takes what is proposed. */
    void enter(String typed) {
        HornMap map = view().map();
        CupLine cup = view().cup().orElse(null);
        String job = map == null ? null : map.job();
        if (map == null || cup == null || job == null) {
            shown.trouble("No job is open for this horn: take it in first.");
            return;
        }
        Layer layer = view().layer();
        KeyField field = view().field();
        Assignment pad = layer == Layer.PADS ? view().tray().found().get(cup.cup()) : null;
        boolean fitted = cup.pad() != null && cup.pad().own();
        if (!typed.isBlank()) {
            write(map.horn(), () -> entering.enter(job, cup, layer, field, typed));
        } else if (pad == null || fitted) {
            step(1);
        } else {
            write(map.horn(), () -> entering.fit(job, pad));
        }
    }

    private void write(String horn, Supplier<Deed> deed) {
        work.write(progress -> deed.get(), shown.ends(done -> written(horn, done)));
    }

    private void written(String horn, Deed deed) {
        shown.show(view().saying(Words.sentence(deed.title())).choosing(view().step(1)));
        show(horn);
    }
}
