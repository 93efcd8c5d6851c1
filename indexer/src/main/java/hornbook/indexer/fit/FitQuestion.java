package hornbook.indexer.fit;

import java.util.List;
import java.util.Optional;

/**
 * What is wanted, in the words of a person: each as typed, empty where it was not given.
 *
 * @param kind id or name of a kind of part or supply
 * @param diameter the kind's chief round measure
 * @param length its length or thickness
 * @param bore its bore or hole
 * @param thread a designation
 * @param with further ones, {@code name=value}; a value may be a range {@code 3.8..4.0} or alternatives {@code a|b}
 * @param own a piece in hand that lies in no drawer, {@code name=value}
 * @param model id or title of the horn's model
 * @param reserve whether what is set aside may be offered
 * @param count pieces wanted
 */
public record FitQuestion(
        String kind,
        Optional<String> diameter,
        Optional<String> length,
        Optional<String> bore,
        Optional<String> thread,
        List<String> with,
        List<String> own,
        Optional<String> model,
        boolean reserve,
        int count) {
    /** Keeps its own copies. */
    public FitQuestion {
        with = List.copyOf(with);
        own = List.copyOf(own);
    }

    /** A kind with what is wanted as {@code name=value}. */
    public static FitQuestion of(String kind, String... with) {
        return new FitQuestion(
                kind,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(with),
                List.of(),
                Optional.empty(),
                false,
                1);
    }
}
