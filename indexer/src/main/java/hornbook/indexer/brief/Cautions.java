package hornbook.indexer.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Caution;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Thing;
import hornbook.catalogue.entry.Tool;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How what is fetched can hurt, each said once. */
final class Cautions {
    private final Catalogue catalogue;
    private final Map<String, List<String>> carriers = new LinkedHashMap<>();
    private final Map<String, CautionLine> lines = new LinkedHashMap<>();

    Cautions(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    List<CautionLine> of(List<Thing> things) {
        for (Thing thing : things) {
            switch (thing) {
                case Supply supply -> {
                    supply.hazards().forEach(h -> hazard(h, supply));
                    own(supply, supply.caution());
                }
                case Tool tool -> own(tool, tool.caution());
                default -> {}
            }
        }
        return lines.values().stream()
                .map(l -> new CautionLine(l.id(), l.title(), l.text(), carriers.getOrDefault(l.id(), List.of())))
                .toList();
    }

    private void hazard(String id, Supply of) {
        if (catalogue.entry(id).orElse(null) instanceof Caution caution) {
            String signal = caution.signalWord() == null ? "" : caution.signalWord() + ": ";
            note(new CautionLine(id, caution.title(), signal + caution.text(), List.of()), of);
        }
    }

    private void own(Thing thing, @Nullable String text) {
        if (text != null) {
            note(new CautionLine(thing.id(), thing.title(), text, List.of()), thing);
        }
    }

    private void note(CautionLine line, Thing of) {
        lines.putIfAbsent(line.id(), line);
        carriers.computeIfAbsent(line.id(), _ -> new ArrayList<>()).add(of.title());
    }
}
