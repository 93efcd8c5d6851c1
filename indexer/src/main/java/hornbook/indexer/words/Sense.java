package hornbook.indexer.words;

/**
 * One thing a term means.
 *
 * @param concept id of an entry, {@code trait=value}, a word of the trade or a designation
 * @param share how far the term speaks for it, 0 to 1
 * @param kind synonym, spelling, misspelling, abbreviation, plural, name, or a language
 */
public record Sense(String concept, float share, String kind) {
    private static final java.util.Set<String> LANGUAGES = java.util.Set.of("German", "French", "Spanish", "Dutch");

    /** Whether the term belongs to another language than English. */
    public boolean foreign() {
        return LANGUAGES.contains(kind);
    }
}
