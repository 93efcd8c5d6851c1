package hornbook.indexer.card;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Thing;
import hornbook.catalogue.entry.Tool;
import hornbook.catalogue.entry.UseOn;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Cards of parts, tools and supplies, each with what it may be used on. */
final class ThingCards {
    /** Typical ranges are in millimetres and do not say so. */
    private static final Pattern RANGE = Pattern.compile("\\b\\d+(\\.\\d+)?-\\d+(\\.\\d+)?\\b");

    private final Map<String, List<UseOn>> uses;

    ThingCards(Catalogue catalogue) {
        uses = catalogue.all(UseOn.class).values().stream().collect(Collectors.groupingBy(UseOn::use));
    }

    Draft part(Part part) {
        Draft card = thing("part", part);
        if (part.typicalRange() != null) {
            RANGE.matcher(part.typicalRange()).results().forEach(range -> card.size(range.group() + " mm"));
        }
        return card.say(Field.TEXT, part.dimensions())
                .say(Field.TEXT, part.typicalRange())
                .say(Field.TEXT, part.material())
                .say(Field.TEXT, part.mustMatch())
                .say(Field.TEXT, part.mayBeWorked())
                .say(Field.TEXT, part.notes());
    }

    Draft tool(Tool tool) {
        Draft card = thing("tool", tool).say(Field.TEXT, tool.look()).say(Field.TEXT, tool.caution());
        tool.serves().forEach(served -> card.link(served, 0.2f));
        return card;
    }

    Draft supply(Supply supply) {
        Draft card = thing("supply", supply)
                .say(Field.NAME, supply.group())
                .say(Field.GIST, supply.sizes())
                .say(Field.TEXT, supply.usedPerJob())
                .say(Field.TEXT, supply.storage())
                .say(Field.TEXT, supply.caution());
        supply.hazards().forEach(hazard -> card.link(hazard, 0.2f));
        return card;
    }

    private Draft thing(String kind, Thing thing) {
        Draft card = Card.draft(kind, thing.id(), thing.title())
                .say(Field.NAME, thing.otherNames())
                .say(
                        Field.NAME,
                        TroubleCards.words(thing.id().substring(thing.id().indexOf('-') + 1)));
        for (UseOn use : uses.getOrDefault(thing.id(), List.of())) {
            card.say(Field.TEXT, use.why());
            use.values().forEach(value -> card.concept(use.trait() + "=" + value, 0.3f));
        }
        return card;
    }
}
