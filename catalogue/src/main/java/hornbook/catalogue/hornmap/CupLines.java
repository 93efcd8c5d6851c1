package hornbook.catalogue.hornmap;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Cup;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.KeyMap;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.hornmap.CupLine.Note;
import hornbook.catalogue.hornmap.CupLine.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts together, cup by cup, what was read on a horn and what its model has. */
final class CupLines {
    /** More than this from what the model has is worth a question (common practice, jobs-and-times.md §3). */
    private static final double WORTH_A_QUESTION = 0.3;

    private final Catalogue catalogue;
    private final HornReadings readings;
    private final @Nullable Model model;
    private final String instrument;

    CupLines(Catalogue catalogue, HornReadings readings, @Nullable Model model, String instrument) {
        this.catalogue = catalogue;
        this.readings = readings;
        this.model = model;
        this.instrument = instrument;
    }

    List<CupLine> of(List<Cup> cups) {
        return cups.stream().map(this::line).toList();
    }

    private CupLine line(Cup cup) {
        Optional<KeyMap> modelKey = modelKey(cup.id());
        Size inside = readings.size(Usuals.INSIDE, cup.id(), false)
                .or(() -> modelKey.map(KeyMap::cupInside).map(CupLines::ofModel))
                .orElse(null);
        Size found = readings.size(Usuals.HEIGHT, cup.id(), false).orElse(null);
        Size left = readings.size(Usuals.HEIGHT, cup.id(), true).orElse(null);
        return new CupLine(
                cup.id(),
                cup.title(),
                cup.rest().word(),
                pad(cup.id()),
                inside,
                found,
                left,
                model == null ? null : model.keyHeights().get(cup.id()),
                Usuals.height(cup, instrument).orElse(null),
                Usuals.pad(cup, instrument).orElse(null),
                notes(cup.id()),
                new KeyMeasures(readings.key(cup.id()).orElse(null), modelKey.orElse(null)).list(),
                remarks(cup, inside, left == null ? found : left));
    }

    private @Nullable Size pad(String cup) {
        Optional<Size> own = readings.pad(cup);
        return own.or(() -> Optional.ofNullable(model)
                        .map(Model::padSet)
                        .map(set -> set.get(cup))
                        .map(CupLines::ofModel))
                .orElse(null);
    }

    private static Size ofModel(double mm) {
        return new Size(mm, CupLine.MODEL);
    }

    private Optional<KeyMap> modelKey(String cup) {
        return model == null
                ? Optional.empty()
                : model.map().stream().filter(key -> cup.equals(key.cup())).findFirst();
    }

    private List<Note> notes(String cup) {
        return readings.at(cup).stream()
                .map(f -> new Note(f.date(), f.job(), title(f.what()), f.value(), f.unit(), f.note()))
                .toList();
    }

    private String title(String what) {
        return catalogue.entry(what).map(Entry::title).orElse(what);
    }

    private List<String> remarks(Cup cup, @Nullable Size inside, @Nullable Size height) {
        List<String> remarks = new ArrayList<>();
        unusual(cup, Usuals.HEIGHT, height).ifPresent(remarks::add);
        unusual(cup, Usuals.INSIDE, inside).ifPresent(remarks::add);
        ofModel(cup, height).ifPresent(remarks::add);
        return remarks;
    }

    private Optional<String> unusual(Cup cup, String what, @Nullable Size read) {
        return Optional.ofNullable(read)
                .filter(Size::own)
                .flatMap(size -> new Usuals(catalogue).of(what, instrument, cup.id(), size.mm()))
                .filter(Usualness::outside)
                .map(u -> u.title() + " outside the usual " + u.usual() + " mm: " + u.means());
    }

    private Optional<String> ofModel(Cup cup, @Nullable Size height) {
        Double has = model == null ? null : model.keyHeights().get(cup.id());
        if (has == null || height == null || Math.abs(height.mm() - has) <= WORTH_A_QUESTION) {
            return Optional.empty();
        }
        double by = Math.round((height.mm() - has) * 10) / 10.0;
        String way = by > 0 ? " mm over" : " mm under";
        return Optional.of(Usuals.plain(Math.abs(by)) + way + " the " + Usuals.plain(has)
                + " mm its model has: misread, or changed?");
    }
}
