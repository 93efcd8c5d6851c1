package hornbook.catalogue.pack;

import java.util.List;

/**
 * A pack that was written.
 *
 * @param entries their ids
 * @param leftOut entries that stay here, and why
 */
public record Made(String file, List<String> entries, List<LeftOut> leftOut) {
    /** Keeps its own copies. */
    public Made {
        entries = List.copyOf(entries);
        leftOut = List.copyOf(leftOut);
    }

    /** One that stays here. */
    public record LeftOut(String entry, String why) {}
}
