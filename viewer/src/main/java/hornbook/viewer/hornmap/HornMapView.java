package hornbook.viewer.hornmap;

import hornbook.catalogue.hornmap.CupLine;
import hornbook.catalogue.hornmap.HornMap;
import hornbook.shared.job.KeyField;
import hornbook.shared.job.OnBench;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the screen shows at one moment.
 *
 * @param known whether the bench was read, and no horn is being asked for
 * @param bench horns to choose from, while none is shown
 * @param map the horn in view
 * @param tray pads that the tray has for measured cups
 * @param field what is entered on the layer of keys
 * @param chosen cup that the next entry goes to
 * @param said what came of the last entry
 * @param trouble what was refused, at the field
 */
record HornMapView(
        boolean known,
        List<OnBench> bench,
        @Nullable HornMap map,
        Tray tray,
        Layer layer,
        KeyField field,
        String chosen,
        String said,
        @Nullable String trouble) {
    static final HornMapView NOTHING =
            new HornMapView(false, List.of(), null, Tray.NOTHING, Layer.PADS, KeyField.ROD_DIAMETER, "", "", null);

    Optional<CupLine> cup() {
        return map == null
                ? Optional.empty()
                : map.cups().stream().filter(line -> line.cup().equals(chosen)).findFirst();
    }

    /** Can anything be written down? Only under a job. */
    boolean open() {
        return map != null && map.job() != null;
    }

    List<CupMark> marks() {
        return map == null
                ? List.of()
                : map.cups().stream()
                        .map(line -> new Marks(layer, field, tray).mark(line))
                        .toList();
    }

    HornMapView withBench(List<OnBench> horns) {
        return new HornMapView(true, horns, map, tray, layer, field, chosen, said, trouble);
    }

    HornMapView with(@Nullable HornMap horn, Tray pads) {
        boolean same = horn != null && map != null && horn.horn().equals(map.horn());
        boolean there =
                horn != null && horn.cups().stream().anyMatch(line -> line.cup().equals(chosen));
        String first = horn == null || horn.cups().isEmpty()
                ? ""
                : horn.cups().getFirst().cup();
        return new HornMapView(
                false,
                bench,
                horn,
                pads,
                layer,
                field,
                same && there ? chosen : first,
                same ? said : "",
                same ? trouble : null);
    }

    HornMapView choosing(String cup) {
        return new HornMapView(known, bench, map, tray, layer, field, cup, said, null);
    }

    HornMapView on(Layer other) {
        return new HornMapView(known, bench, map, tray, other, field, chosen, "", null);
    }

    HornMapView on(KeyField other) {
        return new HornMapView(known, bench, map, tray, Layer.KEYS, other, chosen, "", null);
    }

    HornMapView saying(String words) {
        return new HornMapView(known, bench, map, tray, layer, field, chosen, words, null);
    }

    HornMapView troubled(String why) {
        return new HornMapView(known, bench, map, tray, layer, field, chosen, said, why);
    }

    /** The cup so many places further down the tube; it stays at the ends. */
    String step(int by) {
        List<String> cups =
                map == null ? List.of() : map.cups().stream().map(CupLine::cup).toList();
        int at = cups.indexOf(chosen);
        return cups.isEmpty() ? "" : cups.get(Math.clamp(at + by, 0, cups.size() - 1));
    }

    /** What is asked for at the chosen cup. */
    String asks() {
        String what = layer == Layer.KEYS ? field.title() + (field.millimetres() ? ", mm" : "") : layer.asks();
        return cup().map(CupLine::title).orElse("") + ": " + what;
    }
}
