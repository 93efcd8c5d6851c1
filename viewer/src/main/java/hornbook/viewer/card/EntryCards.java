package hornbook.viewer.card;

import hornbook.catalogue.edit.Facts;
import hornbook.catalogue.edit.Field;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Caution;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Fault;
import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.MeasureTaken;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Operation;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Practice;
import hornbook.catalogue.entry.Quirk;
import hornbook.catalogue.entry.Seller;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.entry.Tool;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.UseOn;
import hornbook.catalogue.entry.Word;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Cards of knowledge: what an entry says, and where it comes from. */
final class EntryCards {
    private final Supplier<Catalogue> catalogue;

    /** @param catalogue asked each time, as the shop's own entries may have changed */
    EntryCards(Supplier<Catalogue> catalogue) {
        this.catalogue = catalogue;
    }

    /** What a person calls the entry of that id; the id itself where there is none. */
    String title(String id) {
        return catalogue.get().entry(id).map(Entry::title).orElse(id);
    }

    Optional<Card> card(String id) {
        Catalogue now = catalogue.get();
        return now.entry(id).map(entry -> card(entry, now));
    }

    private static Card card(Entry entry, Catalogue catalogue) {
        Blocks blocks = new Blocks();
        Titles titles = new Titles(catalogue);
        HornFacts horns = new HornFacts(blocks, titles);
        ThingFacts things = new ThingFacts(blocks, titles);
        WorkFacts work = new WorkFacts(blocks, titles);
        switch (entry) {
            case Quirk quirk -> work.of(quirk);
            case Fault fault -> work.of(fault);
            case Operation operation -> work.of(operation);
            case Task task -> work.of(task);
            case Practice practice -> work.of(practice);
            case MeasureTaken measure -> work.of(measure);
            case Make make -> horns.of(make);
            case Model model -> horns.of(model);
            case Seller seller -> horns.of(seller);
            case Trait trait -> horns.of(trait);
            case Part part -> things.of(part);
            case Supply supply -> things.of(supply);
            case Tool tool -> things.of(tool);
            case Caution caution -> things.of(caution);
            case UseOn use -> things.of(use);
            case Word word -> things.of(word);
            default -> plain(entry, blocks);
        }
        blocks.text("Where this comes from", entry.source() + "; " + entry.sureness());
        return new Card(entry.entryKind().word(), entry.id(), entry.title(), blocks.list());
    }

    /** Of what is seldom looked up, every field as it stands. */
    private static void plain(Entry entry, Blocks blocks) {
        Map<String, String> facts = new LinkedHashMap<>(Facts.of(entry));
        List.of("id", "title", "source", "sureness").forEach(facts::remove);
        facts.forEach((field, words) -> blocks.text(Field.title(field.replace(".", ", ")), words));
    }
}
