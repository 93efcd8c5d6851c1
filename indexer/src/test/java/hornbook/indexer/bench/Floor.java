package hornbook.indexer.bench;

import hornbook.indexer.words.Cutter;
import hornbook.indexer.words.Token;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/**
 * The least that could be done: sorted words and numbers of records on the heap; all of the words, the last as a
 * prefix, the first twenty by number. No synonyms, no ranking, no reasons.
 */
final class Floor implements Peer {
    private final String[] words;
    private final int[][] postings;
    private final List<String> rows;

    private Floor(String[] words, int[][] postings, List<String> rows) {
        this.words = words;
        this.postings = postings;
        this.rows = rows;
    }

    static Floor of(Texts texts) {
        TreeMap<String, Growing> all = new TreeMap<>();
        List<String> rows = new ArrayList<>();
        texts.each(one -> {
            for (Token word : Cutter.cut(one.body())) {
                all.computeIfAbsent(word.text(), w -> new Growing()).add(rows.size());
            }
            rows.add(one.id() + " " + one.title());
        });
        String[] words = all.keySet().toArray(String[]::new);
        int[][] postings = all.values().stream().map(Growing::whole).toArray(int[][]::new);
        return new Floor(words, postings, rows);
    }

    private static final class Growing {
        private int[] numbers = new int[2];
        private int size;

        void add(int number) {
            if (size > 0 && numbers[size - 1] == number) {
                return;
            }
            numbers = size == numbers.length ? Arrays.copyOf(numbers, 2 * size) : numbers;
            numbers[size++] = number;
        }

        int[] whole() {
            return Arrays.copyOf(numbers, size);
        }
    }

    @Override
    public String name() {
        return "floor";
    }

    @Override
    public int ask(String typed) {
        List<Token> said = Cutter.cut(typed);
        if (said.isEmpty()) {
            return 0;
        }
        boolean half = !typed.endsWith(" ");
        int from = range(said.getLast().text());
        int to = half
                ? range(said.getLast().text() + "\uffff")
                : from + (has(from, said.getLast().text()) ? 1 : 0);
        int[][] others = new int[said.size() - 1][];
        for (int i = 0; i < others.length; i++) {
            int at = range(said.get(i).text());
            if (!has(at, said.get(i).text())) {
                return 0;
            }
            others[i] = postings[at];
        }
        return meet(from, to, others);
    }

    private boolean has(int at, String word) {
        return at < words.length && words[at].equals(word);
    }

    private int range(String word) {
        int at = Arrays.binarySearch(words, word);
        return at < 0 ? -at - 1 : at;
    }

    private int meet(int from, int to, int[][] others) {
        int[] best = new int[ROWS];
        int found = 0;
        for (int word = from; word < to; word++) {
            for (int number : postings[word]) {
                if (found == ROWS && number >= best[ROWS - 1]) {
                    break;
                }
                if (in(others, number)) {
                    found = keep(best, found, number);
                }
            }
        }
        int read = 0;
        for (int i = 0; i < found; i++) {
            read += rows.get(best[i]).isEmpty() ? 0 : 1;
        }
        return read;
    }

    private static boolean in(int[][] others, int number) {
        for (int[] other : others) {
            if (Arrays.binarySearch(other, number) < 0) {
                return false;
            }
        }
        return true;
    }

    private static int keep(int[] best, int found, int number) {
        int at = Arrays.binarySearch(best, 0, found, number);
        if (at >= 0) {
            return found;
        }
        int place = -at - 1;
        int size = Math.min(ROWS, found + 1);
        System.arraycopy(best, place, best, place + 1, size - 1 - place);
        best[place] = number;
        return size;
    }
}
