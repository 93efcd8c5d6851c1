package hornbook.indexer.words;

import hornbook.shared.measure.SizeMention;
import hornbook.shared.measure.SizeReader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Parts the sizes of a text from its words. */
public final class TextReader {
    /** The furthest that a writing of a size reaches from its digit: {@code music wire gauge no 12}. */
    private static final int AROUND = 28;

    private final Supplier<SizeReader> tables;
    private volatile @Nullable SizeReader sizes;

    /** @param tables called once, when there is a digit to read: most queries have none */
    public TextReader(Supplier<SizeReader> tables) {
        this.tables = tables;
    }

    private SizeReader sizes() {
        SizeReader known = sizes;
        if (known == null) {
            known = tables.get();
            sizes = known;
        }
        return known;
    }

    /** The words outside sizes, and the sizes, both in order. */
    public record Pieces(List<Token> words, List<SizeMention> sizes) {}

    public Pieces read(String text) {
        List<SizeMention> found = mentions(text);
        List<Token> words = Cutter.cut(text);
        if (!found.isEmpty()) {
            words.removeIf(
                    word -> found.stream().anyMatch(size -> word.start() < size.end() && size.start() < word.end()));
        }
        return new Pieces(words, found);
    }

    /** The sizes of a text. Looks only around digits: most of a long text has none. */
    public List<SizeMention> mentions(String text) {
        List<SizeMention> found = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            int digit = nextDigit(text, at);
            if (digit < 0) {
                break;
            }
            int from = Math.max(at, blankBefore(text, digit - AROUND));
            int to = end(text, digit);
            for (SizeMention size : sizes().mentions(text.substring(from, to))) {
                found.add(new SizeMention(size.start() + from, size.end() + from, size.text(), size.size()));
            }
            at = to;
        }
        return found;
    }

    /** The end of the stretch around a digit and those that follow it closely. */
    private static int end(String text, int digit) {
        int to = digit + AROUND;
        for (int i = digit; i < Math.min(text.length(), to); i++) {
            if (Character.isDigit(text.charAt(i))) {
                to = i + AROUND;
            }
        }
        while (to < text.length() && text.charAt(to) != ' ') {
            to++;
        }
        return Math.min(to, text.length());
    }

    private static int blankBefore(String text, int at) {
        return at <= 0 ? 0 : Math.max(0, text.lastIndexOf(' ', at));
    }

    private static int nextDigit(String text, int from) {
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isDigit(c) || (c >= '¼' && c <= '¾') || (c == 'd' && text.startsWith("drill", i))) {
                return i;
            }
        }
        return -1;
    }
}
