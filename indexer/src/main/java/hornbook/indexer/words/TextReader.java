package hornbook.indexer.words;

import hornbook.shared.measure.SizeMention;
import hornbook.shared.measure.SizeReader;
import java.util.List;

/** Parts the sizes of a text from its words. */
public record TextReader(SizeReader sizes) {

    /** The words outside sizes, and the sizes, both in order. */
    public record Pieces(List<Token> words, List<SizeMention> sizes) {}

    public Pieces read(String text) {
        List<SizeMention> found = mayHoldSizes(text) ? sizes.mentions(text) : List.of();
        List<Token> words = Cutter.cut(text);
        if (!found.isEmpty()) {
            words.removeIf(
                    word -> found.stream().anyMatch(size -> word.start() < size.end() && size.start() < word.end()));
        }
        return new Pieces(words, found);
    }

    private static boolean mayHoldSizes(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isDigit(c) || (c >= '¼' && c <= '¾')) {
                return true;
            }
        }
        return text.contains("drill");
    }
}
