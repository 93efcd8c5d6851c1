package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Cup;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.hornmap.Usualness;
import hornbook.shared.stock.ToolCard;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/** The question after a finding was chosen: what was read, where, with what. */
final class ReadingAsk {
    private static final Field NOTE = Field.text("note", "Note", "");

    private final Field where;
    private final Field tool;

    ReadingAsk(Collection<Cup> cups, List<ToolCard> gauges) {
        where = Field.choice(
                "where",
                "Where",
                Stream.concat(
                                Stream.of(new Choice("", "the whole horn")),
                                cups.stream().map(cup -> new Choice(cup.id(), cup.title())))
                        .toList());
        tool = Field.choice(
                "tool",
                "Read with",
                Stream.concat(
                                Stream.of(new Choice("", "not named")),
                                gauges.stream().map(gauge -> new Choice(gauge.id(), gauge.title())))
                        .toList());
    }

    /** The reading itself, with what is to be known before it is taken. */
    Ask reading(Usualness usual) {
        String range = usual.usual().isEmpty() ? "" : "  Usual: " + usual.usual() + " " + usual.unit() + ".";
        String consent = usual.consent() == null ? "" : "  First the owner's yes: " + usual.consent() + ".";
        return new Ask(
                usual.title() + "." + range + "  " + usual.how() + "." + consent,
                "Write it down",
                Field.number("value", "As read" + (usual.unit().isEmpty() ? "" : ", " + usual.unit()), ""),
                where,
                Field.choice("left", "It is", List.of(new Choice("", "as found"), new Choice("left", "as left"))),
                tool,
                NOTE);
    }

    /** What was observed. */
    static Ask observation(Trait trait) {
        List<Choice> values = trait.values().stream()
                .map(value -> new Choice(value.id(), value.id().replace('-', ' ')))
                .toList();
        Field value = values.isEmpty() ? Field.text("value", "As seen", "") : Field.choice("value", "As seen", values);
        return new Ask(trait.question(), "Write it down", value, NOTE);
    }

    /** Where a fault is. */
    Ask fault(String title) {
        return new Ask(title, "Write it down", where, NOTE);
    }
}
