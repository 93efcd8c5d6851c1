package hornbook.indexer.fit;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Which operations may be worth doing after others: for what is wanted, what was lost, or what a later one looks at. */
final class Useful {
    private final Aim aim;
    private final List<Move> moves;
    private final Looks looks;
    private final Permit permit;
    private final Node start;

    Useful(Aim aim, List<Move> moves, Looks looks, Permit permit, Node start) {
        this.aim = aim;
        this.moves = moves;
        this.looks = looks;
        this.permit = permit;
        this.start = start;
    }

    /** @param work places of those before it */
    boolean next(int at, List<Integer> work) {
        Move move = moves.get(at);
        String dimension = move.dimension();
        List<Move> before = work.stream().map(moves::get).toList();
        boolean lost = before.stream().anyMatch(other -> loses(other, dimension));
        if (!lost
                && !permit.starts(move, start.value(dimension))
                && before.stream().noneMatch(on(dimension))) {
            return false;
        }
        if (sized(move)) {
            return lost || aim.unmet(start, dimension) || lookedAt(at, before) || takesFirst(at);
        }
        return lost
                ? !doneSince(dimension, before)
                : aim.unmet(start, dimension) && before.stream().noneMatch(on(dimension));
    }

    private static java.util.function.Predicate<Move> on(String dimension) {
        return move -> move.dimension().equals(dimension);
    }

    /** Whether it brings about a size, and not a word or a number of things. */
    private boolean sized(Move move) {
        return move.working().gives().isEmpty()
                && !(aim.wants().get(move.dimension()) instanceof Want.Among)
                && !(start.value(move.dimension()) instanceof Value.Word && !move.sets());
    }

    /** Whether a word has been brought about after it was last lost. */
    private boolean doneSince(String dimension, List<Move> before) {
        for (Move move : before.reversed()) {
            if (move.dimension().equals(dimension)) {
                return true;
            }
            if (loses(move, dimension)) {
                return false;
            }
        }
        return false;
    }

    private boolean loses(Move move, String dimension) {
        return move.takesEnd() && goesWithAnEnd(dimension)
                || move.working().marks().containsKey(dimension)
                || move.working().grows().keySet().stream()
                        .anyMatch(word -> dimension.equals(
                                start.piece.craft().fitting().works().get(word)));
    }

    private boolean goesWithAnEnd(String dimension) {
        return start.piece.craft().ends().values().stream()
                .anyMatch(end -> end.loses().containsKey(dimension));
    }

    /** Whether a later operation that may be wanted looks at it and does not find it right, or may not later. */
    private boolean lookedAt(int at, List<Move> before) {
        String dimension = moves.get(at).dimension();
        return moves.subList(at + 1, moves.size()).stream()
                .filter(on(dimension).negate())
                .flatMap(later -> later.check().all().stream().filter(c -> wrong(c, later, dimension, before)))
                .findAny()
                .isPresent();
    }

    private boolean wrong(Comparison comparison, Move later, String dimension, List<Move> before) {
        Set<String> names = looks.of(comparison, later);
        if (!names.contains(dimension)) {
            return false;
        }
        Sight now = aim.sight(start, later, null, null, later.most());
        boolean changed = before.stream().map(Move::dimension).anyMatch(names::contains);
        return comparison.known(now) && (changed || !comparison.holds(now));
    }

    /** An end that is cut now need not be lost later, when what is on it could not be put back. */
    private boolean takesFirst(int at) {
        Move move = moves.get(at);
        boolean later = moves.subList(at + 1, moves.size()).stream()
                .anyMatch(other -> other.takesEnd() && !other.dimension().equals(move.dimension()));
        boolean lost = start.piece.craft().ends().values().stream()
                .flatMap(end -> Stream.of(end.loses()))
                .anyMatch(loses -> !loses.isEmpty());
        return move.takesEnd() && later && lost;
    }
}
