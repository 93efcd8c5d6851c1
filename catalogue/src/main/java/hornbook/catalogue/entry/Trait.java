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

    /** The value of that id. */
    public Optional<TraitValue> value(String id) {
        return values.stream().filter(v -> v.id().equals(id)).findFirst();
    }
}
