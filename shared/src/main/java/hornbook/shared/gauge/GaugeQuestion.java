package hornbook.shared.gauge;

import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.PadSize;

/**
 * A size as somebody wrote it: a length, a drill, a gauge, or a thread (which counts as its major diameter).
 *
 * @param bare unit of a bare number
 * @param tie which way a cup between two pad sizes goes
 */
public record GaugeQuestion(String text, LengthUnit bare, PadSize.Tie tie) {

    /** Millimetres, ties upward. */
    public static GaugeQuestion of(String text) {
        return new GaugeQuestion(text, LengthUnit.MILLIMETRE, PadSize.Tie.UP);
    }
}
