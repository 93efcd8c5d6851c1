package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.KeyMap;
import hornbook.catalogue.entry.Model;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** {@code layout.csv}: a key of a model a row, mm. */
final class Layouts {
    static final String FILE = "layout.csv";
    static final List<String> COLUMNS = List.of(
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

    private Layouts() {}

    static void read(Cells row, Found into) {
        Model model = Models.named(row, into);
        List<KeyMap> map = new ArrayList<>(model.map());
        map.add(new KeyMap(
                row.text("key"),
                row.optional("cup"),
                row.optional("turns_on"),
                row.optional("rod"),
                row.number("diameter_mm"),
                row.number("length_mm"),
                row.optional("thread"),
                row.optional("draws_out"),
                row.optional("spring"),
                row.number("spring_mm"),
                row.number("spring_length_mm"),
                row.number("cup_inside_mm"),
                row.number("rim_inside_mm"),
                row.number("rim_outside_mm"),
                row.number("resonator_mm"),
                row.optional("source")));
        into.add(Models.with(model, map, model.takingDown()), FILE);
    }

    static Stream<List<String>> rows(Model model) {
        return model.map().stream()
                .map(key -> List.of(
                        model.id(),
                        key.key(),
                        text(key.cup()),
                        text(key.turnsOn()),
                        text(key.rod()),
                        Numbers.places(key.diameter(), 2),
                        Numbers.places(key.length(), 1),
                        text(key.thread()),
                        text(key.drawsOut()),
                        text(key.spring()),
                        Numbers.places(key.springSize(), 2),
                        Numbers.shortest(key.springLength()),
                        Numbers.places(key.cupInside(), 1),
                        Numbers.places(key.rimInside(), 1),
                        Numbers.places(key.rimOutside(), 1),
                        Numbers.shortest(key.resonator()),
                        text(key.source())));
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }
}
