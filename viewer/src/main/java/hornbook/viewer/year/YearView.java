package hornbook.viewer.year;

import hornbook.shared.year.YearAnswer;
import org.jspecify.annotations.Nullable;

/**
 * What the pane shows at one moment.
 *
 * @param books null before the first answer
 * @param running whether the year is the one that today is in
 * @param doing what is under way; empty for nothing
 * @param said what was written, or went wrong; empty for nothing
 */
record YearView(@Nullable YearAnswer books, boolean running, String doing, String said) {
    static final YearView NOTHING = new YearView(null, true, "", "");

    YearView with(YearAnswer year, boolean now) {
        return new YearView(year, now, "", "");
    }

    YearView doing(String what) {
        return new YearView(books, running, what, "");
    }

    YearView saying(String words) {
        return new YearView(books, running, "", words);
    }
}
