package hornbook.shared.gauge;

import hornbook.shared.measure.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A size in every form.
 *
 * @param text as asked
 * @param size what it is; the middle of a range
 * @param low least of a range or doubt
 * @param high most of it
 * @param millimetres exact
 * @param inches to the hundred-thousandth
 * @param thou to the hundredth
 * @param thread where the text was a thread: then {@code size} is its major diameter
 * @param scales each series of names, with its nearest on either side
 * @param within every name that lies in a range or doubt
 * @param pad for a cup of this inside diameter; empty outside 6 to 72 mm
 */
public record GaugeAnswer(
        String text,
        Length size,
        Optional<Length> low,
        Optional<Length> high,
        BigDecimal millimetres,
        BigDecimal inches,
        BigDecimal thou,
        Optional<ThreadSizes> thread,
        List<Neighbours> scales,
        List<Near> within,
        Optional<Pad> pad) {

    /**
     * A thread's own sizes.
     *
     * @param pitch crest to crest
     */
    public record ThreadSizes(
            String designation,
            String standard,
            Length pitch,
            Length pitchDiameter,
            Length minorOfHole,
            String source) {}

    /**
     * One series of names around the size.
     *
     * @param at the name that is this size to the micrometre
     */
    public record Neighbours(String series, Optional<Near> below, Optional<Near> at, Optional<Near> above) {}

    /**
     * A name near the size.
     *
     * @param error its size less the size asked
     * @param remark where its table is weak
     */
    public record Near(String name, Length size, Length error, Optional<String> remark) {}

    /**
     * A pad.
     *
     * @param error its size less the cup's inside
     */
    public record Pad(String size, Length error) {}
}
