package hornbook.indexer.fit;

import hornbook.indexer.fit.Stretches.Stretch;
import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The least minutes that a choice of operations takes, whatever is chosen after it: dimension by dimension, as though the
 * others were no hindrance. Infinite where one of them cannot come out as wanted any more.
 */
final class Ahead {
    private final Aim aim;
    private final Minutes minutes;
    private final List<Move> moves;
    private final Reaching reaching;
    private final Node start;
    private final Set<String> unmet = new TreeSet<>();
    private final Set<String> workable = new HashSet<>();
    private final Map<Known, Double> known = new HashMap<>();
    private final Map<Known, Stretches> after = new HashMap<>();

    /** Operations on one dimension that are chosen, and the place from which on others may be. */
    private record Known(String dimension, List<Integer> chosen, int from) {}

    Ahead(Aim aim, Minutes minutes, List<Move> moves, Reaching reaching, Node start) {
        this.aim = aim;
        this.minutes = minutes;
        this.moves = moves;
        this.reaching = reaching;
        this.start = start;
        moves.forEach(move -> workable.add(move.dimension()));
        aim.wants().keySet().stream().filter(d -> aim.unmet(start, d)).forEach(unmet::add);
    }

    /** Whether it is not as wanted to begin with. */
    boolean unmet(String dimension) {
        return unmet.contains(dimension);
    }

    /** @param from the place from which on others may be chosen */
    double least(List<Integer> work, int from) {
        Set<String> all = new HashSet<>(unmet);
        work.forEach(place -> all.add(moves.get(place).dimension()));
        double least = start.minutes + settingUp(work);
        for (String dimension : all) {
            List<Integer> chosen = work.stream()
                    .filter(place -> moves.get(place).dimension().equals(dimension))
                    .toList();
            least += known(new Known(dimension, chosen, next(dimension, from)));
        }
        return least;
    }

    /** The place of the next operation on it: those before make no difference. */
    private int next(String dimension, int from) {
        int next = from;
        while (next < moves.size() && !moves.get(next).dimension().equals(dimension)) {
            next++;
        }
        return next;
    }

    private double known(Known asked) {
        Double before = known.get(asked);
        if (before == null) {
            before = anew(asked);
            known.put(asked, before);
        }
        return before;
    }

    private double settingUp(List<Integer> work) {
        Set<String> setUp = new HashSet<>(start.setUp);
        double all = 0;
        for (int place : work) {
            Move move = moves.get(place);
            all += setUp.add(move.id()) ? minutes.of(move, true, 0, 0) : 0;
        }
        return all;
    }

    private double anew(Known asked) {
        String dimension = asked.dimension();
        double chosen = asked.chosen().stream()
                .mapToDouble(place -> one(moves.get(place)))
                .sum();
        if (moves.stream().anyMatch(move -> alters(move, dimension))) {
            return chosen;
        }
        if (start.value(dimension) instanceof Value.Amount(double mm, double _)
                && !(aim.wants().get(dimension) instanceof Want.Among)
                && moves.stream().noneMatch(move -> move.dimension().equals(dimension) && !plain(move))) {
            return before(asked, 0).minutes(mm) * aim.count();
        }
        return !asked.chosen().isEmpty() || !unmet.contains(dimension)
                ? chosen
                : moves.subList(asked.from(), moves.size()).stream()
                        .filter(move -> move.dimension().equals(dimension))
                        .mapToDouble(this::one)
                        .min()
                        .orElse(Double.POSITIVE_INFINITY);
    }

    /** One unit of work, without setting up. */
    private double one(Move move) {
        return minutes.of(move, false, move.unitsStarted() ? 1 : 0, aim.count());
    }

    private static boolean plain(Move move) {
        return move.working().gives().isEmpty() && move.working().reaches() == null;
    }

    private static boolean alters(Move move, String dimension) {
        return !move.working().grows().isEmpty() || move.working().marks().containsKey(dimension);
    }

    /** Before the chosen operation there is at that place of the choice. */
    private Stretches before(Known asked, int at) {
        if (at == asked.chosen().size()) {
            return optional(asked);
        }
        Move move = moves.get(asked.chosen().get(at));
        boolean last = at + 1 == asked.chosen().size();
        double stock = at == 0 ? 0 : moves.get(asked.chosen().get(at - 1)).leaves();
        Stretches next = before(asked, at + 1);
        Stretches ended = last ? Stretches.least(with(next, last(move, asked.dimension()))) : next;
        return Stretches.least(worked(move, ended, stock));
    }

    /** Before any of the operations that may still be chosen: each may be left out, and takes as little as it likes. */
    private Stretches optional(Known asked) {
        Known all = new Known(asked.dimension(), List.of(), asked.from());
        Stretches before = after.get(all);
        if (before == null) {
            before = new Stretches(List.of());
            for (Move move : moves.subList(asked.from(), moves.size()).reversed()) {
                if (move.dimension().equals(asked.dimension())) {
                    Stretches ended = Stretches.least(with(before, last(move, asked.dimension())));
                    before = Stretches.least(with(before, worked(move, ended, 0)));
                }
            }
            after.put(all, before);
        }
        return before;
    }

    private List<Stretch> worked(Move move, Stretches ended, double stock) {
        Set<String> open = new HashSet<>(workable);
        open.remove(move.dimension());
        List<Stretch> all = new ArrayList<>();
        // What may still change makes its units fewer, too: then one is the least that can be said.
        boolean fewer = reaching.looksAt(move, open);
        Stretches next = fewer ? ended.dearer(minutes.of(move, false, move.unitsStarted() ? 1 : 0, 1)) : ended;
        for (Reach reach : reaching.of(move, start, open, far(move.dimension()))) {
            all.addAll((fewer ? reach.free() : reach).before(next, stock));
        }
        return all;
    }

    /** Larger than this nothing is worked on the way. */
    private double far(String dimension) {
        double now = start.value(dimension) instanceof Value.Amount(double mm, double _) ? mm : 0;
        return 2 * (aim.wants().get(dimension) instanceof Between between ? Math.max(now, between.high()) : now);
    }

    private static List<Stretch> with(Stretches now, List<Stretch> more) {
        List<Stretch> all = new ArrayList<>(now.all());
        all.addAll(more);
        return all;
    }

    private List<Stretch> last(Move move, String dimension) {
        return aim.wants().get(dimension) instanceof Between between
                ? Stretches.wanted(between, move).all()
                : List.of(new Stretch(0, far(dimension), 0));
    }
}
