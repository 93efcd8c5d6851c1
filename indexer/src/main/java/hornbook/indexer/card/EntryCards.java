package hornbook.indexer.card;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Caution;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Fault;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.MeasureTaken;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Operation;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Quirk;
import hornbook.catalogue.entry.Seller;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.entry.Tool;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.Word;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Cards of the entries: knowledge, shipped and own. */
public final class EntryCards {
    private static final Set<Kind> COMPARED =
            EnumSet.of(Kind.TRAIT, Kind.QUIRK, Kind.FAULT, Kind.PART, Kind.TOOL, Kind.SUPPLY);

    private final Catalogue catalogue;
    private final HornCards horns;
    private final TroubleCards troubles;
    private final ThingCards things;
    private final WorkCards work;
    private final Neighbours neighbours;
    private final Aliases aliases;

    public EntryCards(Catalogue catalogue) {
        this.catalogue = catalogue;
        horns = new HornCards(catalogue);
        troubles = new TroubleCards();
        things = new ThingCards(catalogue);
        work = new WorkCards();
        neighbours = new Neighbours(catalogue);
        aliases = new Aliases(catalogue);
        Likeness likeness = new Likeness();
        catalogue.all().stream()
                .filter(entry -> COMPARED.contains(entry.entryKind()))
                .forEach(entry -> bare(entry).ifPresent(likeness::add));
        neighbours.like(likeness);
    }

    /** A card of each entry that can be found by itself. */
    public List<Card> all() {
        return catalogue.all().stream()
                .map(this::draft)
                .flatMap(Optional::stream)
                .map(Draft::card)
                .toList();
    }

    /** The card of an entry, unfinished, so that the shop's own facts can be added. */
    Optional<Draft> draft(Entry entry) {
        return bare(entry)
                .map(card -> card.say(Field.ALIAS, String.join("; ", aliases.of(entry.id())))
                        .beside(neighbours.of(entry.id())));
    }

    private Optional<Draft> bare(Entry entry) {
        return Optional.ofNullable(
                switch (entry) {
                    case Trait trait -> troubles.trait(trait);
                    case Quirk quirk -> troubles.quirk(quirk);
                    case Fault fault -> troubles.fault(fault);
                    case Part part -> things.part(part);
                    case Tool tool -> things.tool(tool);
                    case Supply supply -> things.supply(supply);
                    case Make make -> horns.make(make);
                    case Seller seller -> horns.seller(seller);
                    case Model model -> horns.model(model);
                    case Operation operation -> work.operation(operation);
                    case Task task -> work.task(task);
                    case MeasureTaken measure -> work.measure(measure);
                    case Caution caution -> work.caution(caution);
                    case Word word -> work.word(word);
                    default -> null;
                });
    }
}
