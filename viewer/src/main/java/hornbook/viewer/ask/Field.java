package hornbook.viewer.ask;

import java.util.List;

/**
 * One thing that is asked.
 *
 * @param name by which the answer is found again
 * @param label what a person reads before it
 * @param text what stands in it at first: of a choice, the value that is chosen
 * @param choices what may be chosen; none where it is written
 * @param broad whether words are to be written, and not a number
 * @param begun whether a person has begun to write it, and goes on
 */
public record Field(String name, String label, String text, List<Choice> choices, boolean broad, boolean begun) {
    public Field {
        choices = List.copyOf(choices);
    }

    /** One of the things that may be chosen. */
    public record Choice(String value, String words) {}

    /** A field for words. */
    public static Field text(String name, String label, String text) {
        return new Field(name, label, text, List.of(), true, false);
    }

    /** A field for a number. */
    public static Field number(String name, String label, String text) {
        return new Field(name, label, text, List.of(), false, false);
    }

    /** A field to choose in; the first is chosen. */
    public static Field choice(String name, String label, List<Choice> choices) {
        return new Field(name, label, choices.getFirst().value(), choices, true, false);
    }

    /** With something else standing in it. */
    public Field holding(String other) {
        return new Field(name, label, other, choices, broad, begun);
    }

    /** With what a person has begun to write. */
    public Field begunWith(String other) {
        return new Field(name, label, other, choices, broad, true);
    }
}
