package hornbook.viewer.drawers;

import hornbook.viewer.ask.Ask;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is asked before the cabinets at one moment.
 *
 * @param toPrint ids of the drawers whose labels are to be printed, in the order in which they were laid aside
 * @param ask the question; null while nothing is asked
 * @param said what was done, in a sentence
 */
record DeskView(
        List<String> toPrint, @Nullable Ask ask, @Nullable String said) {
    DeskView {
        toPrint = List.copyOf(toPrint);
    }

    static final DeskView NOTHING = new DeskView(List.of(), null, null);

    DeskView asking(Ask question) {
        return new DeskView(toPrint, question, null);
    }

    DeskView saying(@Nullable String words) {
        return new DeskView(toPrint, null, words);
    }

    DeskView printing(List<String> drawers) {
        return new DeskView(drawers, ask, said);
    }

    DeskView troubled(String why) {
        return ask == null ? new DeskView(toPrint, null, why) : new DeskView(toPrint, ask.troubled(why), said);
    }
}
