package hornbook.shared.measure;

/**
 * A size found in a text.
 *
 * @param start where it begins in the text, in chars
 * @param end the char after its last
 * @param text the piece of the text it was read from
 */
public record SizeMention(int start, int end, String text, Size size) {}
