package hornbook.indexer.search;

import hornbook.indexer.words.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Whether a query asks for what was done before: {@code last time}, {@code last one}, {@code the last Drumlin},
 * {@code how did … go}, {@code before} at its end.
 *
 * @param said the words that ask so; they say nothing of what is looked for
 */
record PastTalk(List<Token> said) {
    private static final Set<String> AFTER_LAST = Set.of("time", "times", "one", "ones", "job", "jobs");
    private static final Set<String> ALONE = Set.of("previous", "previously", "earlier", "history");

    static PastTalk in(List<Token> words) {
        List<Token> said = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i).text();
            boolean end = i + 1 == words.size();
            if (ALONE.contains(word) || (end && i > 0 && word.equals("before"))) {
                said.add(words.get(i));
            } else if (word.equals("last") && !end) {
                last(words, i, said);
            }
        }
        howDidItGo(words, said);
        return new PastTalk(said);
    }

    private static void last(List<Token> words, int at, List<Token> said) {
        boolean opens = at == 0 || words.get(at - 1).text().equals("the");
        int noun = -1;
        for (int i = at + 1; i < words.size(); i++) {
            noun = AFTER_LAST.contains(words.get(i).text()) && (noun < 0) ? i : noun;
        }
        if (opens || noun == at + 1) {
            said.add(words.get(at));
            if (noun >= 0) {
                said.add(words.get(noun));
            }
        }
    }

    private static void howDidItGo(List<Token> words, List<Token> said) {
        Token last = words.isEmpty() ? null : words.getLast();
        boolean asks = words.size() > 2
                && words.get(0).text().equals("how")
                && words.get(1).text().equals("did");
        if (asks && last != null && (last.text().equals("go") || last.text().equals("went"))) {
            said.add(words.get(0));
            said.add(words.get(1));
            said.add(last);
        }
    }

    boolean asked() {
        return !said.isEmpty();
    }

    List<Token> without(List<Token> words) {
        return words.stream().filter(word -> !said.contains(word)).toList();
    }
}
