package hornbook.catalogue.entry;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A character of a horn that can be observed.
 *
 * @param title short name
 * @param question what a person answers
 * @param kind how it is answered
 * @param group where on the horn it belongs
 * @param values what it can be; for a mark, the answers besides text
 * @param look how to look
 * @param cost what the look costs
 * @param miss share of first looks by a competent person that record the wrong value
 * @param missNote what the miss depends on
 * @param mistakes known confusions
 * @param spread standard deviation of a measurement, in the unit; numbers only
 * @param span what a wild reading can be, in the unit; numbers only
 * @param unit of a number
 * @param usual usual figures, in words
 * @param marking the way of looking that leaves a mark, offered only after the owner's yes
 * @param uses what knowing it is good for
 * @param modelled true where it follows from how a model was built, so that models state it; false where it is noted horn by horn
 * @param absentWhen when the trait does not apply to a horn at all
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Trait(
        String id,
        String title,
        String question,
        TraitKind kind,
        String group,
        List<TraitValue> values,
        String look,
        Look cost,
        double miss,
        @Nullable String missNote,
        List<Mistake> mistakes,
        @Nullable Double spread,
        @Nullable Span span,
        @Nullable String unit,
        @Nullable String usual,
        @Nullable Marking marking,
        List<Purpose> uses,
        boolean modelled,
        @Nullable Condition absentWhen,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Trait {
        values = List.copyOf(values);
        mistakes = List.copyOf(mistakes);
        uses = List.copyOf(uses);
    }

    /** The same trait with other ways for a look to go wrong. */
    public Trait looked(double misses, List<Mistake> confusions, @Nullable Double sd, @Nullable Span wild) {
        return new Trait(
                id,
                title,
                question,
                kind,
                group,
                values,
                look,
                cost,
                misses,
                missNote,
                confusions,
                sd,
                wild,
                unit,
                usual,
                marking,
                uses,
                modelled,
                absentWhen,
                source,
                sureness);
    }

    /** The value of that id. */
    public Optional<TraitValue> value(String id) {
        return values.stream().filter(v -> v.id().equals(id)).findFirst();
    }

    static Trait from(Fields in) {
        return new Trait(
                in.text("id"),
                in.text("title"),
                in.text("question"),
                in.word("kind", TraitKind.values()),
                in.text("group"),
                in.list("values", TraitValue::from),
                in.text("look"),
                in.word("cost", Look.values()),
                in.number("miss"),
                in.optionalText("miss_note"),
                in.list("mistakes", Mistake::from),
                in.optionalNumber("spread"),
                in.optional("span", Span::from),
                in.optionalText("unit"),
                in.optionalText("usual"),
                in.optional("marking", Marking::from),
                in.words("uses", Purpose.values()),
                in.yes("modelled"),
                in.optionalCondition("absent_when"),
                in.text("source"),
                in.text("sureness"));
    }
}
