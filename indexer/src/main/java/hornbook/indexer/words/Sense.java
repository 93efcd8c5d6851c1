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

    /** Kind of sense of a word that nearly means what others of its group mean. */
    public static final String NEARLY = "nearly";

    /** Whether the term only nearly means that. */
    public boolean nearly() {
        return kind.equals(NEARLY);
    }

    /** Whether the term belongs to another language than English. */
    public boolean foreign() {
        return LANGUAGES.contains(kind);
    }
}
