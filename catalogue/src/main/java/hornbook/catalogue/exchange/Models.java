package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.KeyMap;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.TakingDown;
import java.util.List;

/** Models that rows of other files add to. */
final class Models {
    private Models() {}

    static Model named(Cells row, Found found) {
        String id = row.text("model");
        return found.entry(Model.class, id)
                .orElseThrow(() -> new BadRow("model", "“" + id + "” is not in models.jsonl: add it there"));
    }

    static Model with(Model m, List<KeyMap> map, List<TakingDown> takingDown) {
        return new Model(
                m.id(),
                m.make(),
                m.title(),
                m.pattern(),
                m.instruments(),
                m.years(),
                m.serialAnchors(),
                m.serialRanges(),
                m.serialLetters(),
                m.traits(),
                m.traitsMany(),
                m.absent(),
                m.threads(),
                m.padSet(),
                m.keyHeights(),
                m.quirksKnown(),
                m.notes(),
                m.hornsSeen(),
                map,
                takingDown,
                m.source(),
                m.sureness());
    }
}
