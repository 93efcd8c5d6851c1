package hornbook.indexer.words;

/**
 * A word or number of a text.
 *
 * @param text folded: small letters, no accents; a key name as {@code g#} or {@code eb}; a decimal comma as a point
 * @param start where it begins in the text, in chars
 * @param end the char after its last
 * @param capital whether it began with a capital letter
 */
public record Token(String text, int start, int end, boolean capital) {

    /** Made of letters alone, so that a slip of the finger may be forgiven in it. */
    public boolean letters() {
        return text.chars().allMatch(Character::isLetter);
    }

    /** Holds a digit: a number, thread, serial or number of a record, in which nothing is forgiven. */
    public boolean number() {
        return text.chars().anyMatch(Character::isDigit);
    }

    /** A key by name: a letter from a to g, alone or with sharp or flat. */
    public boolean key() {
        char first = text.charAt(0);
        return first >= 'a'
                && first <= 'g'
                && (text.length() == 1 || (text.length() == 2 && (text.charAt(1) == '#' || text.charAt(1) == 'b')));
    }
}
