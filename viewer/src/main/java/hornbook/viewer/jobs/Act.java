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
    TAKE_IN("Take in", 'a', For.ANY, ActGroup.OWNER),
    CLOCK("Clock", 'c', For.OPEN, ActGroup.WORK),
    TIMES("Times", 'j', For.OPEN, ActGroup.WORK),
    FINDING("Finding", 'f', For.OPEN, ActGroup.NOTE),
    PART("Part", 'p', For.OPEN, ActGroup.WORK),
    MAP("Map, pads", 'm', For.ALL, ActGroup.WORK),
    DOWN("Took down", 'd', For.OPEN, ActGroup.NOTE),
    TIMER("Timer", 't', For.OPEN, ActGroup.WORK),
    WHERE("Where it is", 'w', For.OPEN, ActGroup.NOTE),
    YES("Owner's yes", 'y', For.OPEN, ActGroup.OWNER),
    QUIRK("Quirk met", 'u', For.OPEN, ActGroup.NOTE),
    PHOTO("Photo", 'i', For.ALL, ActGroup.NOTE),
    WRONG("What is wrong", 'l', For.OPEN, ActGroup.ASK),
    ESTIMATE("Estimate", 'e', For.OPEN, ActGroup.OWNER),
    QUOTE_SHEET("Quote sheet", 'g', For.OPEN, ActGroup.OWNER),
    QUOTE("Agree", 'q', For.OPEN, ActGroup.OWNER),
    CLOSE("Close", 'x', For.OPEN, ActGroup.OWNER),
    TEACH("Teach model", 'l', For.DONE, ActGroup.NOTE),
    HAND_BACK("Hand back", 'g', For.DONE, ActGroup.OWNER),
    BACK_SHEET("Hand-back sheet", 'p', For.DONE, ActGroup.OWNER),
    FOLLOW_UP("Follow-up", 'f', For.DONE, ActGroup.OWNER),
    FIT("What fits", 'z', For.ALL, ActGroup.ASK),
    PAST("Past jobs", 's', For.ANY, ActGroup.ASK),
    HONESTY("How honest", 'v', For.ANY, ActGroup.ASK),
    YEAR("The year", '.', For.ANY, ActGroup.ASK);

    private enum For {
        ANY,
        ALL,
        OPEN,
        DONE
    }

    private final String words;
    private final char letter;
    private final For use;
    private final ActGroup group;

    Act(String words, char letter, For use, ActGroup group) {
        this.words = words;
        this.letter = letter;
        this.use = use;
        this.group = group;
    }

    String words() {
        return words;
    }

    char letter() {
        return letter;
    }

    ActGroup group() {
        return group;
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
