package hornbook.indexer.words;

import java.util.Set;

/** Words that say nothing of what is looked for. A capital A is a key. */
public final class StopWords {
    private static final Set<String> WORDS = Set.of(
            "a", "an", "and", "are", "as", "at", "be", "by", "can", "did", "do", "does", "for", "from", "has", "have",
            "how", "i", "if", "in", "is", "it", "its", "me", "my", "of", "on", "or", "our", "so", "that", "the",
            "their", "them", "there", "these", "they", "this", "to", "was", "we", "were", "what", "when", "where",
            "which", "will", "with", "you", "your", "wheres", "whats", "some", "any", "am", "got", "get");

    private StopWords() {}

    public static boolean has(Token token) {
        return WORDS.contains(token.text()) && !(token.text().equals("a") && token.capital());
    }
}
