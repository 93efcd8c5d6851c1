package hornbook.catalogue.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Work that changes a dimension.
 *
 * @param appliesTo ids of parts and supplies
 * @param changes name of the dimension
 * @param maxAmount most it can change, mm
 * @param maxUnit what the most is counted by
 * @param accuracy leaves the value within plus and minus this, mm
 * @param preconditions what a person has to answer where it says more than the check
 * @param check true if the operation is allowed: comparisons joined by `and`
 * @param minutesSetUp once per operation and plan
 * @param perUnit what a unit is
 * @param units number of units: arithmetic with `ceil`
 * @param tools ids
 * @param spoils what is lost by it
 * @param working what a plan has to know besides
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Operation(
        String id,
        String title,
        List<String> appliesTo,
        String changes,
        Direction direction,
        @Nullable Double maxAmount,
        @Nullable String maxUnit,
        @Nullable Double accuracy,
        @Nullable String rangeNote,
        @Nullable String preconditions,
        String check,
        double minutesSetUp,
        double minutesPerUnit,
        String perUnit,
        String units,
        List<String> tools,
        @Nullable String spoils,
        boolean reversible,
        @Nullable String caution,
        @Nullable Working working,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Operation {
        appliesTo = List.copyOf(appliesTo);
        tools = List.copyOf(tools);
    }

    static Operation from(Fields in) {
        return new Operation(
                in.text("id"),
                in.text("title"),
                in.texts("applies_to"),
                in.text("changes"),
                in.word("direction", Direction.values()),
                in.optionalNumber("max_amount"),
                in.optionalText("max_unit"),
                in.optionalNumber("accuracy"),
                in.optionalText("range_note"),
                in.optionalText("preconditions"),
                in.text("check"),
                in.number("minutes_set_up"),
                in.number("minutes_per_unit"),
                in.text("per_unit"),
                in.text("units"),
                in.texts("tools"),
                in.optionalText("spoils"),
                in.yes("reversible"),
                in.optionalText("caution"),
                in.optional("working", Working::from),
                in.text("source"),
                in.text("sureness"));
    }
}
