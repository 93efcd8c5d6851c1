package hornbook.catalogue.entry;

import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Where a statement comes from and how sure it is.
 *
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Provenance(String source, String sureness) {
    private static final Pattern JOB = Pattern.compile("\\bj-[0-9A-Za-z-]+");

    /** The four sorts of source, best first. */
    public enum Basis {
        /** This shop's own horns. */
        THIS_SHOP,
        /** A standard, a handbook, a public table. */
        PUBLISHED,
        /** What the trade does. */
        COMMON_PRACTICE,
        /** Said from memory. */
        MEMORY
    }

    /** What sort of source it is. What names none of the other three is taken as published. */
    public Basis basis() {
        String text = source.toLowerCase(Locale.ROOT);
        if (text.startsWith("this shop")) {
            return Basis.THIS_SHOP;
        }
        if (text.startsWith("common practice")) {
            return Basis.COMMON_PRACTICE;
        }
        return text.contains("memory") || text.startsWith("invented") ? Basis.MEMORY : Basis.PUBLISHED;
    }

    /** The shop's jobs that the source names. */
    public List<String> jobs() {
        return JOB.matcher(source).results().map(MatchResult::group).toList();
    }
}
