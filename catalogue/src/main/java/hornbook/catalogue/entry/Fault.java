package hornbook.catalogue.entry;

import java.util.List;

/**
 * A symptom with its causes.
 *
 * @param title the symptom
 * @param causes likeliest first
 * @param check the usual first check
 * @param minutes usual case on alto or tenor, bench minutes, waiting not counted
 * @param per what the minutes are for: the job, each place, or each key
 * @param quirks quirks that say how
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Fault(
        String id,
        String title,
        List<Cause> causes,
        String check,
        String remedy,
        Span minutes,
        String per,
        List<String> quirks,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Fault {
        causes = List.copyOf(causes);
        quirks = List.copyOf(quirks);
    }

    static Fault from(Fields in) {
        return new Fault(
                in.text("id"),
                in.text("title"),
                in.list("causes", Cause::from),
                in.text("check"),
                in.text("remedy"),
                in.one("minutes", Span::from),
                in.text("per"),
                in.texts("quirks"),
                in.text("source"),
                in.text("sureness"));
    }
}
