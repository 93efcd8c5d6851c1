package hornbook.catalogue.entry;

import java.util.List;
import java.util.Map;

/**
 * A kind of thing that a part can be made from.
 *
 * @param through ids of operations that belong to every such making
 * @param usual what it has where its lot does not say
 * @param zones length of the zone worked, where it differs from the part's own
 */
public record Blank(List<String> through, Map<String, String> usual, Map<String, String> zones) {
    /** Keeps its own copies. */
    public Blank {
        through = List.copyOf(through);
        usual = Ordered.copy(usual);
        zones = Ordered.copy(zones);
    }

    static Blank from(Fields in) {
        return new Blank(in.texts("through"), in.textByName("usual"), in.textByName("zones"));
    }
}
