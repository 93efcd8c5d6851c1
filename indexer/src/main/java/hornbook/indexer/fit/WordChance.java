package hornbook.indexer.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Whether a word can still be brought about: a check that is broken now, and that every size the operations before it
 * could lead to breaks the same way, stays broken, as checks are straight lines in each size.
 */
final class WordChance {
    /** Made larger without a limit, nothing comes to more than this many times its size. */
    private static final double FAR = 10;

    private final Aim aim;
    private final List<Move> moves;

    WordChance(Aim aim, List<Move> moves) {
        this.aim = aim;
        this.moves = moves;
    }

    /** Whether the move at {@code place} may come to be allowed, with moves from {@code at} on before it. */
    boolean of(int place, int at, Node node) {
        Move move = moves.get(place);
        Sight now = aim.sight(node, move, null, null, 1);
        return move.check().all().stream()
                .filter(comparison -> comparison.known(now) && !comparison.holds(now))
                .allMatch(comparison -> mended(comparison, move, moves.subList(at, place), node));
    }

    private boolean mended(Comparison comparison, Move move, List<Move> before, Node node) {
        Set<String> names = meant(comparison.names(), move, node);
        if (before.stream().anyMatch(other -> otherwise(other, names, node))) {
            return true;
        }
        double first = comparison.difference(aim.sight(node, move, null, null, 1));
        for (Map<String, Value> corner : corners(names, before, node)) {
            Sight there = aim.sight(node.with(corner), move, null, null, 1);
            double difference = comparison.difference(there);
            if (Double.isNaN(difference) || comparison.holds(there) || difference * first <= 0) {
                return true;
            }
        }
        return false;
    }

    /** What a name stands for, as far as it is other names. */
    private static Set<String> meant(Set<String> names, Move move, Node node) {
        Set<String> all = new HashSet<>(names);
        List<String> open = new ArrayList<>(names);
        while (!open.isEmpty()) {
            String name = open.removeLast();
            Set<String> further = new HashSet<>();
            Formula own = move.names().get(name);
            Formula general = node.piece.craft().names().get(name);
            if (own != null) {
                own.names(further);
            }
            if (general != null) {
                general.names(further);
            }
            if (name.equals("len")) {
                move.zone().ifPresent(zone -> zone.names(further));
            }
            String like = node.piece.like().get(name);
            if (like != null) {
                further.add(like);
            }
            further.stream().filter(all::add).forEach(open::add);
        }
        return all;
    }

    /** Whether an operation changes what is named in another way than by a size that goes so far. */
    private static boolean otherwise(Move other, Set<String> names, Node node) {
        boolean ends = other.takesEnd()
                && node.piece.craft().ends().values().stream()
                        .anyMatch(end -> end.loses().keySet().stream().anyMatch(names::contains));
        boolean marks = other.working().marks().keySet().stream().anyMatch(names::contains);
        boolean sized = names.contains(other.dimension())
                && (other.sets()
                        || other.working().reaches() != null
                        || !(node.value(other.dimension()) instanceof Value.Amount));
        return ends || marks || sized || !other.working().grows().isEmpty();
    }

    private static List<Map<String, Value>> corners(Set<String> names, List<Move> before, Node node) {
        Corners corners = new Corners(node.changed);
        before.stream().map(Move::dimension).filter(names::contains).distinct().forEach(dimension -> {
            if (node.value(dimension) instanceof Value.Amount(double mm, double _)) {
                double down = before.stream()
                        .mapToDouble(m -> reach(m, dimension, mm, true))
                        .sum();
                double up = before.stream()
                        .mapToDouble(m -> reach(m, dimension, mm, false))
                        .sum();
                corners.between(dimension, Math.max(0, mm - down), mm + up);
            }
        });
        return corners.all();
    }

    private static double reach(Move move, String dimension, double mm, boolean smaller) {
        if (!move.dimension().equals(dimension) || !(smaller ? move.makesSmaller() : move.makesLarger())) {
            return 0;
        }
        Double most = move.operation().maxAmount();
        return most == null ? FAR * mm : most * move.most();
    }
}
