package hornbook.catalogue.entry;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How pieces of a kind are asked for, and what may be worked on them. Dimensions go by the names of stock records.
 *
 * @param diameter the dimension that is its chief round measure
 * @param length its length or thickness
 * @param bore its bore or hole
 * @param tolerances plus and minus, mm, by dimension, where a single size is asked
 * @param works what an operation's word stands for: the dimension, or several with a bar between
 * @param never ids of operations that are named for its stock but not for such a part
 * @param zones length of the zone worked, by dimension: a formula
 * @param names names in checks that are no dimension: a formula over dimensions, {@code from} and {@code to}
 * @param derived sizes that are asked but belong to two pieces: a formula over one dimension and the horn's facts
 * @param facts names of what belongs to the horn, not to the piece
 * @param implied what facts ask of dimensions that nobody asks for
 * @param usual what a finished piece has where its lot does not say
 * @param usualBlank the same of a blank
 * @param wants what it has to have in the end though nobody asks
 * @param ends what is lost with each end
 * @param blanks kinds of thing it can be made from
 * @param belongs {@code model} or {@code make} where it has to be of the horn's own
 * @param charge charge for using it beyond the usual, minutes: a formula
 * @param longFree a finished piece may lose this much for nothing, mm; beyond it each mm costs 0.1 minute
 */
public record Fitting(
        @Nullable String diameter,
        @Nullable String length,
        @Nullable String bore,
        Map<String, Double> tolerances,
        Map<String, String> works,
        List<String> never,
        Map<String, String> zones,
        Map<String, String> names,
        Map<String, String> derived,
        List<String> facts,
        Map<String, Implied> implied,
        Map<String, String> usual,
        Map<String, String> usualBlank,
        Map<String, String> wants,
        Map<String, PieceEnd> ends,
        Map<String, Blank> blanks,
        @Nullable String belongs,
        @Nullable String charge,
        @Nullable Double longFree) {

    /** Keeps its own copies. */
    public Fitting {
        tolerances = Ordered.copy(tolerances);
        works = Ordered.copy(works);
        never = List.copyOf(never);
        zones = Ordered.copy(zones);
        names = Ordered.copy(names);
        derived = Ordered.copy(derived);
        facts = List.copyOf(facts);
        implied = Ordered.copy(implied);
        usual = Ordered.copy(usual);
        usualBlank = Ordered.copy(usualBlank);
        wants = Ordered.copy(wants);
        ends = Ordered.copy(ends);
        blanks = Ordered.copy(blanks);
    }

    static Fitting from(Fields in) {
        return new Fitting(
                in.optionalText("diameter"),
                in.optionalText("length"),
                in.optionalText("bore"),
                in.numbers("tolerances"),
                in.textByName("works"),
                in.texts("never"),
                in.textByName("zones"),
                in.textByName("names"),
                in.textByName("derived"),
                in.texts("facts"),
                in.byName("implied", Implied::from),
                in.textByName("usual"),
                in.textByName("usual_blank"),
                in.textByName("wants"),
                in.byName("ends", PieceEnd::from),
                in.byName("blanks", Blank::from),
                in.optionalText("belongs"),
                in.optionalText("charge"),
                in.optionalNumber("long_free"));
    }
}
