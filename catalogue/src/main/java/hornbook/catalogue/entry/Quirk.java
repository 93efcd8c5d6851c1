package hornbook.catalogue.entry;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * What follows from how a horn is built and bites the repairer.
 *
 * @param when when it applies
 * @param bites what happens
 * @param whatToDo what to do
 * @param stage id of the stage where it bites
 * @param remindedAt stages where one line reminds of it
 * @param confirm how to make sure that it is so
 * @param group where on the horn it belongs
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Quirk(
        String id,
        String title,
        Condition when,
        CautionLevel caution,
        String bites,
        @JsonProperty("do") String whatToDo,
        String stage,
        List<String> remindedAt,
        List<Wanted> tools,
        List<Wanted> parts,
        List<Wanted> supplies,
        String confirm,
        String group,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Quirk {
        remindedAt = List.copyOf(remindedAt);
        tools = List.copyOf(tools);
        parts = List.copyOf(parts);
        supplies = List.copyOf(supplies);
    }

    static Quirk from(Fields in) {
        return new Quirk(
                in.text("id"),
                in.text("title"),
                in.condition("when"),
                in.word("caution", CautionLevel.values()),
                in.text("bites"),
                in.text("do"),
                in.text("stage"),
                in.texts("reminded_at"),
                in.list("tools", Wanted::from),
                in.list("parts", Wanted::from),
                in.list("supplies", Wanted::from),
                in.text("confirm"),
                in.text("group"),
                in.text("source"),
                in.text("sureness"));
    }
}
