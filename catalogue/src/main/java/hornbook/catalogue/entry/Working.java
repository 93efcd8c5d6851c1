package hornbook.catalogue.entry;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a plan has to know of an operation beyond its limits.
 *
 * @param order its place in the order of work, least first
 * @param leaves stock it leaves for the next operation on the same dimension, mm
 * @param starts words it may begin from; any where none is named
 * @param gives words it can bring about; any where none is named; {@code =name} stands for what that name holds
 * @param only {@code larger} where it sets a size but cannot make it smaller
 * @param whenKnown a further check, passed where its names are not known
 * @param reaches the size it ends at, where that is not free: a formula over {@code from}
 * @param takesEnd takes an end off, and what is at that end
 * @param grows another dimension, by the operation's word for it, and the most that it grows by: a formula
 * @param marks what else it leaves changed: dimension to word
 * @param member kind of the member of a set it wants: tap, die, drill, reamer, punch, collet
 * @param memberSize what names the member: {@code thread}, {@code to}, or a dimension
 * @param pieces pieces that become one
 * @param zone length of the zone worked, mm, where it is not the kind's own: a formula
 * @param names what names in its check stand for, where they mean something of its own: a formula
 * @param most most ends, holes or places on a piece
 */
public record Working(
        int order,
        @Nullable Double leaves,
        List<String> starts,
        List<String> gives,
        @Nullable String only,
        @Nullable String whenKnown,
        @Nullable String reaches,
        @Nullable Boolean takesEnd,
        Map<String, String> grows,
        Map<String, String> marks,
        @Nullable String member,
        @Nullable String memberSize,
        @Nullable Integer pieces,
        @Nullable String zone,
        Map<String, String> names,
        @Nullable Integer most) {

    /** Where an entry says nothing: late, and nothing special. */
    public static final Working PLAIN = new Working(
            90, null, List.of(), List.of(), null, null, null, null, Map.of(), Map.of(), null, null, null, null,
            Map.of(), null);

    /** Keeps its own copies. */
    public Working {
        starts = List.copyOf(starts);
        gives = List.copyOf(gives);
        grows = Ordered.copy(grows);
        marks = Ordered.copy(marks);
        names = Ordered.copy(names);
    }

    static Working from(Fields in) {
        return new Working(
                in.whole("order"),
                in.optionalNumber("leaves"),
                in.texts("starts"),
                in.texts("gives"),
                in.optionalText("only"),
                in.optionalText("when_known"),
                in.optionalText("reaches"),
                in.optionalYes("takes_end"),
                in.textByName("grows"),
                in.textByName("marks"),
                in.optionalText("member"),
                in.optionalText("member_size"),
                in.optionalWhole("pieces"),
                in.optionalText("zone"),
                in.textByName("names"),
                in.optionalWhole("most"));
    }
}
