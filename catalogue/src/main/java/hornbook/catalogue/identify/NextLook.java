package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Look;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A look worth taking.
 *
 * @param trait id
 * @param question what is to be answered
 * @param gainBits expected fall of entropy over entries and unlisted
 * @param worth bits, with those about open quirks, for each unit of cost
 * @param cost what it takes
 * @param look how to look
 * @param guards ids of open quirks that it settles, gravest first
 * @param marks what it does to the horn, where it leaves a mark
 */
public record NextLook(
        String trait,
        String question,
        double gainBits,
        double worth,
        Look cost,
        String look,
        List<String> guards,
        @Nullable String marks) {
    /** Keeps its own copy. */
    public NextLook {
        guards = List.copyOf(guards);
    }
}
