package hornbook.viewer.hand;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What hands do to an open drawer, and the letter that begins it. None of the letters of a label's code is among them
 * ({@code hornbook}): those pass through the window before it is known that a reader types.
 */
enum Act {
    COUNT("Count", 'c', true),
    TAKE("Take out", 't', true),
    PUT_IN("Put in", 'p', true),
    MOVE("Move", 'm', true),
    SPLIT("Split", 's', true),
    JOIN("Join", 'j', true),
    SORT_OUT("Sort out", 'w', true),
    SET_ASIDE("Set aside", 'a', true),
    FIT("Make it fit", 'f', true),
    KEEPSAKE("Keep as pattern", 'e', true),
    DESCRIBE("Put right", 'd', true),
    RETIRE("Out of use", 'x', true),
    LABEL("Label", 'l', false),
    NEW("Something new", 'i', false),
    STRIP("Empty it", 'y', false),
    LOOK("Looked through", 'g', false);

    private final String words;
    private final char letter;
    private final boolean onLot;

    Act(String words, char letter, boolean onLot) {
        this.words = words;
        this.letter = letter;
        this.onLot = onLot;
    }

    String words() {
        return words;
    }

    char letter() {
        return letter;
    }

    /** To one lot, not to the whole drawer. */
    boolean onLot() {
        return onLot;
    }

    static Optional<Act> of(char letter) {
        return Arrays.stream(values()).filter(act -> act.letter == letter).findFirst();
    }

    static List<Act> onLots() {
        return Arrays.stream(values()).filter(Act::onLot).toList();
    }
}
