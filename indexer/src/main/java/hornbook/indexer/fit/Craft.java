package hornbook.indexer.fit;

import hornbook.catalogue.entry.Fitting;
import hornbook.catalogue.entry.PieceEnd;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What may be done with things of one kind, to make a part of that or another kind of them.
 *
 * @param moves in the order of work
 * @param through ids of operations that belong to every such making
 * @param usual what a piece has where its lot does not say, finished and blank
 * @param names what names in checks stand for
 * @param zones length of the zone worked, by dimension
 */
record Craft(
        Fitting fitting,
        List<Move> moves,
        List<Move> through,
        Map<String, String> usual,
        Map<String, String> usualBlank,
        Map<String, Formula> names,
        Map<String, Formula> zones,
        Map<String, PieceEnd> ends) {
    Craft {
        moves = List.copyOf(moves);
        through = List.copyOf(through);
    }

    List<Move> on(String dimension) {
        return moves.stream().filter(m -> m.dimension().equals(dimension)).toList();
    }

    /** Whether a dimension is what the kind calls its length or thickness, or what operations on those change. */
    boolean along(String dimension) {
        return dimension.equals(fitting.length())
                || Stream.of("length", "thickness")
                        .flatMap(word -> Stream.ofNullable(fitting.works().get(word)))
                        .anyMatch(works -> Bars.apart(works).contains(dimension));
    }

    Optional<Formula> zone(String dimension) {
        return Optional.ofNullable(zones.get(dimension));
    }
}
