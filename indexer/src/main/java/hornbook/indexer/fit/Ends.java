package hornbook.indexer.fit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What an operation can sensibly bring about: words and counts that are wanted, or sizes. */
final class Ends {

    private final Aim aim;
    private final List<Move> moves;
    private final SizeEnds sizes;

    Ends(Aim aim, List<Move> moves, SizeEnds sizes) {
        this.aim = aim;
        this.moves = moves;
        this.sizes = sizes;
    }

    /** @param work places of the operations chosen; the one at {@code at} is next */
    Stream<Value> of(List<Integer> work, int at, Node node, @Nullable Value from) {
        Move move = moves.get(work.get(at));
        Optional<Want> want = aim.want(node, move.dimension());
        if (move.working().reaches() != null && from instanceof Value.Amount) {
            Formula reaches = FormulaReader.formula(move.working().reaches());
            return Stream.of(Value.of(reaches.value(aim.sight(node, move, from, from, 1))));
        }
        if (want.isPresent() && want.get() instanceof Want.Among(var words)) {
            return aim.unmet(node, move.dimension()) ? given(move, node, aim, words).stream() : Stream.of();
        }
        if (!move.working().gives().isEmpty()) {
            return want.isPresent() ? numbers(move, want.get(), from).stream() : Stream.of();
        }
        return sizes.of(work, at, node, want.orElse(null), from);
    }

    /** The words, of those wanted, that an operation can bring about. */
    static List<Value> given(Move move, Node node, Aim aim, List<String> words) {
        List<String> gives = move.working().gives().stream()
                .map(word -> word.startsWith("=") ? held(node, aim, word.substring(1)) : word)
                .toList();
        return words.stream()
                .filter(word -> gives.isEmpty() || gives.stream().anyMatch(word::equalsIgnoreCase))
                .map(word -> (Value) new Value.Word(word))
                .toList();
    }

    /** Counts it brings about: a slot, no rivet. */
    static List<Value> numbers(Move move, Want want, @Nullable Value from) {
        return move.working().gives().stream()
                .map(text -> Pieces.value(text, name -> null))
                .filter(value -> want.met(value) && !value.equals(from))
                .toList();
    }

    private static String held(Node node, Aim aim, String name) {
        Value value = node.value(name) == null ? aim.facts().get(name) : node.value(name);
        return value == null ? "" : value.shown();
    }
}
