package hornbook.catalogue.identify;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A question made ready: the horn's own findings are among the looks, the serial is read.
 *
 * @param model of the horn asked about, where the books have one: that horn does not count for it
 * @param except id of that horn
 * @param taken id of the model that it is taken to be
 */
record Case(
        List<Seen> seen,
        @Nullable SerialReading serial,
        @Nullable String mark,
        @Nullable String model,
        @Nullable String except,
        @Nullable String taken,
        boolean plain) {}
