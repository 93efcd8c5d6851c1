package hornbook.indexer.search;

import java.util.List;
import java.util.Set;

/**
 * What is looked for.
 *
 * @param text as typed; without a blank at its end the last word may be half typed
 * @param limit most hits wanted, 1 to {@link #MOST}
 * @param kinds only these kinds; empty means all
 */
public record Question(String text, int limit, Set<String> kinds) {
    /** Most hits that can be asked for. */
    public static final int MOST = 1000;

    /** Kinds of record that can be found, in the order in which they are listed. */
    public static final List<String> KINDS = List.of(
            "make",
            "model",
            "seller",
            "trait",
            "quirk",
            "fault",
            "part",
            "supply",
            "tool",
            "operation",
            "task",
            "finding",
            "caution",
            "word",
            "cabinet",
            "place",
            "lot",
            "horn",
            "job",
            "supplier");

    private static final int LONGEST = 400;
    private static final int USUAL = 20;

    public Question {
        text = text.length() > LONGEST ? text.substring(0, LONGEST) : text;
        limit = Math.clamp(limit, 1, MOST);
        kinds = Set.copyOf(kinds);
    }

    /** Twenty hits of any kind. */
    public static Question of(String text) {
        return new Question(text, USUAL, Set.of());
    }
}
