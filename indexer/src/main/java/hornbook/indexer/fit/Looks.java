package hornbook.indexer.fit;

import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** At which dimensions of a piece the checks of operations look, and where these have to lie for it. */
final class Looks {
    private static final Set<String> THREAD = Set.of("major", "pitch", "pct");

    private final Aim aim;
    private final Piece piece;
    private final Map<Move, Set<String>> byMove = new IdentityHashMap<>();
    private final Map<Comparison, Set<String>> byComparison = new IdentityHashMap<>();

    Looks(Aim aim, Piece piece) {
        this.aim = aim;
        this.piece = piece;
    }

    /** All that its check, or its minutes, depend on. */
    Set<String> of(Move move) {
        Set<String> all = byMove.get(move);
        if (all == null) {
            all = meant(move.units(), move);
            for (Comparison comparison : move.comparisons()) {
                all.addAll(of(comparison, move));
            }
            byMove.put(move, all);
        }
        return all;
    }

    /** What is changed of all it looks at but the size it is put to. */
    Map<String, Value> changed(Set<String> seen, String dimension, Node node) {
        Map<String, Value> changed = new HashMap<>(node.changed);
        changed.keySet().retainAll(seen);
        changed.remove(dimension);
        return changed;
    }

    Set<String> of(Comparison comparison, Move move) {
        Set<String> all = byComparison.get(comparison);
        if (all == null) {
            all = meant(comparison.left(), move);
            all.addAll(meant(comparison.right(), move));
            byComparison.put(comparison, all);
        }
        return all;
    }

    /** Names and what they stand for, as far as that is other names. */
    private Set<String> meant(Formula formula, Move move) {
        Set<String> all = formula.names();
        List<String> open = new ArrayList<>(all);
        while (!open.isEmpty()) {
            further(open.removeLast(), move).stream().filter(all::add).forEach(open::add);
        }
        return all;
    }

    private Set<String> further(String name, Move move) {
        Set<String> further = new HashSet<>();
        Formula own = move.names().get(name);
        Formula general = own == null ? piece.craft().names().get(name) : own;
        if (general != null) {
            general.names(further);
        }
        if (name.equals("len")) {
            move.zone().ifPresent(zone -> zone.names(further));
        }
        if (THREAD.contains(name)) {
            further.add("thread");
        }
        if (name.equals("pct")) {
            further.add("hole");
        }
        String like = piece.has().containsKey(name) ? null : piece.like().get(name);
        if (like != null) {
            further.add(like);
        }
        return further;
    }

    /** Whether it looks at a dimension, as it stands or by one that is like it until that is worked itself. */
    boolean at(Comparison comparison, Move move, String dimension, Set<String> worked) {
        Set<String> names = of(comparison, move);
        return names.contains(dimension)
                && names.stream().noneMatch(name -> worked.contains(name) && !name.equals(dimension));
    }

    /**
     * Where a size has to lie so that another operation may be done.
     *
     * @param worked what else is worked before that: what looks at such a thing too is left to {@link Permit}
     */
    Between room(Move move, String dimension, Node node, Set<String> worked) {
        Limits limits = Limits.NONE;
        for (Comparison comparison : move.check().all()) {
            if (at(comparison, move, dimension, worked)) {
                Straight line = Straight.of((mm, _) -> comparison.difference(
                                aim.sight(node.with(dimension, Value.of(mm)), move, null, null, move.most())))
                        .orElse(null);
                if (line != null && line.byEnd() != 0) {
                    limits = limits.holding(comparison.relation(), line);
                }
            }
        }
        return limits.end();
    }
}
