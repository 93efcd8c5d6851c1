package hornbook.viewer.hornmap;

import hornbook.shared.pads.Assignment;
import hornbook.shared.pads.PadAnswer;
import hornbook.shared.pads.Shortage;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the tray of pads has for the measured cups of a job.
 *
 * @param found by cup
 * @param none for which cups nothing is left within half a millimetre, and what to do
 */
record Tray(Map<String, Assignment> found, Map<String, String> none) {
    static final Tray NOTHING = new Tray(Map.of(), Map.of());

    static Tray of(PadAnswer answer) {
        return new Tray(
                answer.assignments().stream().collect(Collectors.toMap(Assignment::cup, pad -> pad, (a, b) -> a)),
                answer.shortages().stream().collect(Collectors.toMap(Shortage::cup, Shortage::why, (a, b) -> a)));
    }

    /** Size of the pad that is proposed for a cup, mm. */
    @Nullable
    Double size(String cup) {
        Assignment pad = found.get(cup);
        return pad == null ? null : pad.size().doubleValue();
    }
}
