package hornbook.catalogue.entry;

import java.util.List;

/**
 * A term people type or say, and what it means.
 *
 * @param title the term
 * @param meanings all of them are offered
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Word(String id, String title, List<Meaning> meanings, String source, String sureness) implements Entry {

    /** Keeps its own copies. */
    public Word {
        meanings = List.copyOf(meanings);
    }

    static Word from(Fields in) {
        return new Word(
                in.text("id"),
                in.text("title"),
                in.list("meanings", Meaning::from),
                in.text("source"),
                in.text("sureness"));
    }
}
