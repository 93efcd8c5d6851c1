package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.KeyMap;
import hornbook.shared.exchange.CsvFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** layout.csv: what each key of a model turns on, its spring, cup, rim and resonator; all mm. */
final class LayoutFile {
    static final String NAME = "layout.csv";
    private static final List<String> COLUMNS = List.of(
            "model",
            "key",
            "cup",
            "turns_on",
            "rod",
            "diameter_mm",
            "length_mm",
            "thread",
            "draws_out",
            "spring",
            "spring_mm",
            "spring_length_mm",
            "cup_inside_mm",
            "rim_inside_mm",
            "rim_outside_mm",
            "resonator_mm",
            "source");

    void read(Path file, Intake intake) {
        Models<KeyMap> models = new Models<>(intake);
        new Table(file, COLUMNS).read(intake, cells -> models.add(cells.text("model"), key(cells)));
        models.finish(NAME, (model, keys) -> model.with(keys, model.takingDown()));
    }

    void write(Catalogue catalogue, Sorted sorted, Path file) throws IOException {
        var models = sorted.own(catalogue, catalogue.models().values(), NAME);
        CsvFile.write(
                file,
                COLUMNS,
                models.flatMap(m -> m.map().stream().map(key -> row(m.id(), key)))
                        .toList());
    }

    private static KeyMap key(Cells cells) {
        return new KeyMap(
                cells.text("key"),
                cells.optional("cup"),
                cells.optional("turns_on"),
                cells.optional("rod"),
                cells.optionalNumber("diameter_mm"),
                cells.optionalNumber("length_mm"),
                cells.optional("thread"),
                cells.optional("draws_out"),
                cells.optional("spring"),
                cells.optionalNumber("spring_mm"),
                cells.optionalNumber("spring_length_mm"),
                cells.optionalNumber("cup_inside_mm"),
                cells.optionalNumber("rim_inside_mm"),
                cells.optionalNumber("rim_outside_mm"),
                cells.optionalNumber("resonator_mm"),
                cells.optional("source"));
    }

    private static List<String> row(String model, KeyMap key) {
        return List.of(
                model,
                key.key(),
                Objects.toString(key.cup(), ""),
                Objects.toString(key.turnsOn(), ""),
                Objects.toString(key.rod(), ""),
                Decimals.write(key.diameter(), 2),
                Decimals.write(key.length(), 1),
                Objects.toString(key.thread(), ""),
                Objects.toString(key.drawsOut(), ""),
                Objects.toString(key.spring(), ""),
                Decimals.write(key.springSize(), 2),
                Decimals.write(key.springLength(), 0),
                Decimals.write(key.cupInside(), 1),
                Decimals.write(key.rimInside(), 1),
                Decimals.write(key.rimOutside(), 1),
                Decimals.write(key.resonator(), 0),
                Objects.toString(key.source(), ""));
    }
}
