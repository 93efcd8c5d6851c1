package hornbook.indexer.words;

import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;

/**
 * Cuts a text into words and numbers. Hyphens and slashes part words; an apostrophe does not ({@code won't} is
 * {@code wont}); numbers of records stay whole ({@code lot-0465}); {@code G♯}, {@code G sharp} and {@code Gis} are
 * {@code g#}, {@code E♭}, {@code Eb} and {@code E flat} are {@code eb}.
 */
public final class Cutter {
    private final String text;
    private final List<Token> tokens = new ArrayList<>();
    private int at;

    private Cutter(String text) {
        this.text = text;
    }

    /** The words and numbers of a text, in order. */
    public static List<Token> cut(String text) {
        Cutter cutter = new Cutter(text);
        while (cutter.at < text.length()) {
            if (Character.isLetterOrDigit(text.charAt(cutter.at))) {
                cutter.word();
            } else {
                cutter.at++;
            }
        }
        return cutter.tokens;
    }

    /** The words of a text joined by single blanks. */
    public static String joined(String text) {
        StringBuilder joined = new StringBuilder();
        for (Token token : cut(text)) {
            joined.append(joined.isEmpty() ? "" : " ").append(token.text());
        }
        return joined.toString();
    }

    private void word() {
        int start = at;
        while (at < text.length() && goesOn(start)) {
            at++;
        }
        String raw = text.substring(start, at);
        boolean capital = Character.isUpperCase(raw.charAt(0));
        if (raw.length() == 1 && at < text.length() && isSign(text.charAt(at))) {
            String sign = text.charAt(at) == '♭' ? "b" : "#";
            at++;
            tokens.add(new Token(fold(raw) + sign, start, at, capital));
            return;
        }
        add(key(fold(raw)), start, capital);
    }

    private void add(String word, int start, boolean capital) {
        if ((word.equals("sharp") || word.equals("flat")) && !tokens.isEmpty()) {
            Token before = tokens.getLast();
            if (before.text().length() == 1 && before.key() && start - before.end() == 1) {
                tokens.removeLast();
                String name = before.text() + (word.equals("flat") ? "b" : "#");
                tokens.add(new Token(name, before.start(), at, before.capital()));
                return;
            }
        }
        if (!word.isEmpty()) {
            tokens.add(new Token(word, start, at, capital));
        }
    }

    private boolean goesOn(int start) {
        char c = text.charAt(at);
        if (Character.isLetterOrDigit(c)) {
            return true;
        }
        if (at == start) {
            return false;
        }
        char before = text.charAt(at - 1);
        char after = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
        return switch (c) {
            case '\'', '’' -> Character.isLetter(before) && Character.isLetter(after);
            case '.', ',' -> Character.isDigit(before) && Character.isDigit(after);
            case '?' -> Character.isDigit(before) && at - start >= 3;
            case '-' -> Character.isDigit(after) && isRecordPrefix(start);
            default -> false;
        };
    }

    /** {@code lot-}, {@code h-}, {@code j-}: what the numbers of records begin with, then digits alone. */
    private boolean isRecordPrefix(int start) {
        if (at - start > 4) {
            return false;
        }
        for (int i = start; i < at; i++) {
            if (!Character.isLowerCase(text.charAt(i))) {
                return false;
            }
        }
        int digits = at + 1;
        while (digits < text.length() && Character.isDigit(text.charAt(digits))) {
            digits++;
        }
        return digits - at > 3;
    }

    private static boolean isSign(char c) {
        return c == '#' || c == '♯' || c == '♭';
    }

    /** German names of keys: cis, dis, fis, gis are sharps. */
    private static String key(String word) {
        return word.length() == 3 && word.endsWith("is") && "cdfg".indexOf(word.charAt(0)) >= 0
                ? word.charAt(0) + "#"
                : word;
    }

    /** Small letters without accents; apostrophes go, a decimal comma becomes a point. */
    public static String fold(String raw) {
        StringBuilder folded = new StringBuilder(raw.length());
        char[] out = new char[4];
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            if (c == ',') {
                folded.append('.');
            } else if (c < 0x80) {
                if (c != '\'') {
                    folded.append((char) (c >= 'A' && c <= 'Z' ? c + 32 : c));
                }
            } else if (c != '’') {
                int n = ASCIIFoldingFilter.foldToASCII(new char[] {Character.toLowerCase(c)}, 0, out, 0, 1);
                folded.append(out, 0, n);
            }
        }
        return folded.toString();
    }
}
