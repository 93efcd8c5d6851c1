package hornbook.indexer.words;

import java.util.Set;

/** Words that say nothing of what is looked for. A capital A is a key. */
public final class StopWords {
    private static final Set<String> WORDS = Set.of(
            "a", "an", "and", "are", "as", "at", "be", "by", "can", "did", "do", "does", "for", "from", "has", "have",
            "how", "i", "if", "in", "is", "it", "its", "me", "my", "of", "on", "or", "our", "so", "that", "the",
            "their", "them", "there", "these", "they", "this", "to", "was", "we", "were", "what", "when", "where",
            "which", "who", "will", "with", "you", "your", "wheres", "whats", "some", "any", "am", "got", "get");

    /** Small words of German, French, Spanish and Dutch; passed over only between the words of a term. */
    private static final Set<String> FOREIGN = Set.of(
            "der", "die", "das", "den", "dem", "des", "und", "von", "zum", "zur", "fur", "mit", "ein", "eine", "le",
            "la", "les", "de", "du", "qui", "un", "une", "et", "el", "los", "las", "del", "que", "y", "para", "se",
            "het", "een", "van", "en", "voor", "met", "ne", "nicht", "geht", "im", "am");

    private StopWords() {}

    /** A term without the small words of other languages. */
    static String skeleton(String term) {
        StringBuilder bare = new StringBuilder();
        for (String word : term.split(" ")) {
            if (!FOREIGN.contains(word)) {
                bare.append(bare.isEmpty() ? "" : " ").append(word);
            }
        }
        return bare.toString();
    }

    /** Words that say little: directions, helpers, and what everybody says. */
    private static final Set<String> FAINT = Set.of(
            "out",
            "off",
            "up",
            "down",
            "over",
            "under",
            "between",
            "into",
            "too",
            "not",
            "no",
            "wont",
            "doesnt",
            "dont",
            "cant",
            "isnt",
            "come",
            "comes",
            "came",
            "coming",
            "go",
            "goes",
            "going",
            "keep",
            "keeps",
            "get",
            "gets",
            "need",
            "needs",
            "want",
            "new",
            "old",
            "one",
            "first",
            "all",
            "when",
            "after",
            "before",
            "use",
            "using",
            "find",
            "make",
            "whole",
            "thing",
            "quirk",
            "quirks",
            "horn",
            "sax",
            "saxophone",
            "every",
            "only",
            "just",
            "again",
            "then");

    /** Whether a word says nothing. */
    public static boolean has(Token token) {
        return WORDS.contains(token.text()) && !(token.text().equals("a") && token.capital());
    }

    /** Whether a word says little. */
    public static boolean faint(Token token) {
        return FAINT.contains(token.text());
    }
}
