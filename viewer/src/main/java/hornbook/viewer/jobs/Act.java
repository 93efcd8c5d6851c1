package hornbook.viewer.jobs;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is done on a job, and the letter that begins it. None of the letters of a label's code is among them ({@code
 * hornbook}): those pass through the window before it is known that a reader types.
 */
public enum Act {
    TAKE_IN("Take in", 'a', For.ANY),
    CLOCK("Clock", 'c', For.OPEN),
    TIMES("Times", 'j', For.OPEN),
    FINDING("Finding", 'f', For.OPEN),
    PART("Part", 'p', For.OPEN),
    MAP("Map, pads", 'm', For.ALL),
    DOWN("Took down", 'd', For.OPEN),
    TIMER("Timer", 't', For.OPEN),
    WHERE("Where it is", 'w', For.OPEN),
    YES("Owner's yes", 'y', For.OPEN),
    QUIRK("Quirk met", 'u', For.OPEN),
    PHOTO("Photo", 'i', For.ALL),
    WRONG("What is wrong", 'l', For.OPEN),
    ESTIMATE("Estimate", 'e', For.OPEN),
    QUOTE_SHEET("Quote sheet", 'g', For.OPEN),
    QUOTE("Agree", 'q', For.OPEN),
    CLOSE("Close", 'x', For.OPEN),
    TEACH("Teach model", 'l', For.DONE),
    HAND_BACK("Hand back", 'g', For.DONE),
    BACK_SHEET("Hand-back sheet", 'p', For.DONE),
    FOLLOW_UP("Follow-up", 'f', For.DONE),
    FIT("What fits", 'z', For.ALL),
    PAST("Past jobs", 's', For.ANY),
    HONESTY("How honest", 'v', For.ANY);

    private enum For {
        ANY,
        ALL,
        OPEN,
        DONE
    }

    private final String words;
    private final char letter;
    private final For use;

    Act(String words, char letter, For use) {
        this.words = words;
        this.letter = letter;
        this.use = use;
    }

    String words() {
        return words;
    }

    char letter() {
        return letter;
    }

    /** Whether it can be done on that page; on none, where none is open. */
    boolean fits(@Nullable JobPage page) {
        return switch (use) {
            case ANY -> true;
            case ALL -> page != null;
            case OPEN -> page != null && page.open();
            case DONE -> page != null && !page.open();
        };
    }

    static List<Act> fitting(@Nullable JobPage page) {
        return Arrays.stream(values()).filter(act -> act.fits(page)).toList();
    }

    /** What that letter begins on the page: one letter may begin another act on a job that is done. */
    static Optional<Act> of(char letter, @Nullable JobPage page) {
        return fitting(page).stream()
                .filter(act -> act.letter == Character.toLowerCase(letter))
                .findFirst();
    }
}
