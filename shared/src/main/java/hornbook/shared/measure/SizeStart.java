package hornbook.shared.measure;

import java.util.Locale;
import java.util.Set;

/**
 * How a size can begin at a place in a text. Most places hold none, and this says so without a pattern: texts are read
 * by the hundred thousand when the index is built.
 */
enum SizeStart {
    NONE,
    DIGIT,
    HASH,
    WORD;

    private static final String VULGAR = "½¼¾⅛⅜⅝⅞";
    private static final String JOINED = "-/.,#×♭♯_";
    private static final String AFTER_NUMBER = "\"″”'x×±+–-…" + VULGAR;
    private static final Set<String> FIRST_WORDS = Set.of(
            "no",
            "number",
            "nr",
            "drill",
            "letter",
            "loewenherz",
            "awg",
            "a",
            "american",
            "swg",
            "s",
            "imperial",
            "british",
            "standard",
            "us",
            "u",
            "uss",
            "manufacturers",
            "sheet",
            "steel",
            "bwg",
            "b",
            "birmingham",
            "stubs",
            "music",
            "piano",
            "brass",
            "m");
    private static final Set<String> NEXT_WORDS = Set.of(
            "mm",
            "millimetre",
            "millimetres",
            "millimeter",
            "millimeters",
            "cm",
            "um",
            "µm",
            "μm",
            "micron",
            "microns",
            "thou",
            "in",
            "inch",
            "inches",
            "unc",
            "unf",
            "unef",
            "uns",
            "un",
            "nc",
            "nf",
            "nef",
            "ns",
            "old",
            "asme",
            "bsw",
            "whitworth",
            "whit",
            "bsf",
            "me",
            "model",
            "ba",
            "b",
            "awg",
            "a",
            "american",
            "swg",
            "s",
            "imperial",
            "british",
            "standard",
            "us",
            "u",
            "uss",
            "manufacturers",
            "sheet",
            "steel",
            "bwg",
            "birmingham",
            "stubs",
            "music",
            "piano",
            "brass",
            "tpi");

    /** How a size may begin here; {@code NONE} is certain, the others are only possible. */
    static SizeStart at(String text, int at) {
        char first = text.charAt(at);
        if (first == ' ' || (at > 0 && joined(text.charAt(at - 1)))) {
            return NONE;
        }
        if (first == '#') {
            return digit(text, at + 1) ? HASH : NONE;
        }
        if (digit(text, at) || VULGAR.indexOf(first) >= 0) {
            return leadsOn(text, at) ? DIGIT : NONE;
        }
        if (first == '.' || first == ',') {
            return digit(text, at + 1) ? DIGIT : NONE;
        }
        return Character.isLetter(first) && word(text, at) ? WORD : NONE;
    }

    /** Whether a size may end here: not within a word, a serial or a longer number. */
    static boolean endsAt(String text, int end) {
        if (end >= text.length()) {
            return true;
        }
        char next = text.charAt(end);
        boolean part = Character.isLetterOrDigit(next) || next == '♭' || next == '♯';
        return !part && !("-/.,×".indexOf(next) >= 0 && digit(text, end + 1));
    }

    private static boolean joined(char before) {
        return Character.isLetterOrDigit(before) || JOINED.indexOf(before) >= 0;
    }

    private static boolean digit(String text, int at) {
        return at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }

    /** Whether what follows a number can make it a size: a unit, a sign, a fraction, the name of a thread or gauge. */
    private static boolean leadsOn(String text, int at) {
        int after = at;
        while (digit(text, after)) {
            after++;
        }
        if (after < text.length() && "./,⁄".indexOf(text.charAt(after)) >= 0) {
            return after + 1 < text.length() && text.charAt(after + 1) != ' ';
        }
        if (after < text.length() && text.charAt(after) == ' ') {
            after++;
        }
        return after < text.length()
                && (AFTER_NUMBER.indexOf(text.charAt(after)) >= 0
                        || digit(text, after)
                        || text.charAt(after) == '/'
                        || NEXT_WORDS.contains(letters(text, after)));
    }

    private static boolean word(String text, int at) {
        String word = letters(text, at);
        if (word.length() == 1) {
            char letter = word.charAt(0);
            boolean numbered = (letter == 'm' || letter == 's') && digit(text, at + 1);
            boolean drill = text.startsWith(" drill", at + 1);
            boolean spaced = letter == 'm' && digit(text, at + 2);
            return numbered || drill || spaced || text.startsWith(".", at + 1);
        }
        return FIRST_WORDS.contains(word);
    }

    private static String letters(String text, int at) {
        int end = at;
        while (end < text.length() && Character.isLetter(text.charAt(end))) {
            end++;
        }
        return text.substring(at, end).toLowerCase(Locale.ROOT);
    }
}
