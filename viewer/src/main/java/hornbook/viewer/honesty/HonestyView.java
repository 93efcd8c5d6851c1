package hornbook.viewer.honesty;

import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.viewer.work.Reached;
import org.jspecify.annotations.Nullable;

/**
 * What the pane shows at one moment.
 *
 * @param answer null before the first one
 * @param reached how far it is; null where nothing is under way
 * @param said that it was stopped, or what went wrong; empty for nothing
 */
record HonestyView(@Nullable HonestyAnswer answer, @Nullable Reached reached, String said) {
    static final HonestyView NOTHING = new HonestyView(null, null, "");

    HonestyView reaching(Reached now) {
        return new HonestyView(answer, now, "");
    }

    HonestyView with(HonestyAnswer now) {
        return new HonestyView(now, null, "");
    }

    HonestyView saying(String words) {
        return new HonestyView(answer, null, words);
    }
}
