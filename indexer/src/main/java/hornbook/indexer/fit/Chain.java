package hornbook.indexer.fit;

import hornbook.indexer.fit.Stretches.Stretch;
import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Operations on one size, all else being as it is. Worked out from the last of them back, for every size at once (dynamic
 * programming, Bellman 1957): the minutes still to be spent are the same over whole stretches of sizes. Of ends that cost
 * the same the nearest to the middle of what is wanted are taken.
 */
final class Chain {
    private final String dimension;
    private final @Nullable Want want;
    private final Node node;
    private final List<Move> moves;
    private final Rack rack;
    private final Looks looks;
    private final Reaching reaching;
    private final Map<First, Optional<Double>> first = new HashMap<>();
    private final Map<Look, Between> rooms = new HashMap<>();
    private final Map<After, Stretches> after = new HashMap<>();
    private final Map<Reached, List<Reach>> reaches = new HashMap<>();

    /** An operation on something else, by its place, and what it looks at that is worked before it. */
    private record Look(int place, Set<String> worked) {}

    /** Where the size has to lie for an operation to follow. */
    private record Link(int place, boolean own, Between room) {}

    private record First(List<Link> links, double begun, double stock) {}

    private record After(List<Link> links, double far) {}

    private record Reached(int place, double far) {}

    /**
     * Sizes it may have come to.
     *
     * @param spent minutes so far
     * @param all with what is still to be spent
     */
    private record Come(
            double low,
            double high,
            double spent,
            double all,
            @Nullable Come from,
            @Nullable Stroke by) {}

    Chain(
            String dimension,
            @Nullable Want want,
            Node node,
            List<Move> moves,
            Rack rack,
            Looks looks,
            Reaching reaching) {
        this.dimension = dimension;
        this.want = want;
        this.node = node;
        this.moves = moves;
        this.rack = rack;
        this.looks = looks;
        this.reaching = reaching;
    }

    /**
     * Where the first of them ends; none where they lead nowhere.
     *
     * @param work places of all that is chosen, an operation on the size first
     * @param begun mm; not a number where it is not known
     * @param stock that the first has to take at least, mm
     */
    Optional<Double> first(List<Integer> work, double begun, double stock) {
        return first.computeIfAbsent(new First(links(work), begun, stock), this::first);
    }

    private Optional<Double> first(First asked) {
        List<Link> links = asked.links();
        double begun = asked.begun();
        double far = far(links, begun);
        List<Come> now = List.of(new Come(begun, begun, 0, 0, null, null));
        double least = asked.stock();
        for (int k = 0; k < links.size(); k++) {
            if (links.get(k).own()) {
                now = next(now, links.subList(k, links.size()), far, least);
                least = moves.get(links.get(k).place()).leaves();
            }
        }
        return now.isEmpty() ? Optional.empty() : Optional.of(back(now, begun));
    }

    /** The operations on the size, and those whose check looks at it and at nothing else worked before. */
    private List<Link> links(List<Integer> work) {
        List<Link> links = new ArrayList<>();
        Set<String> worked = new HashSet<>();
        for (int place : work) {
            Move move = moves.get(place);
            if (move.dimension().equals(dimension)) {
                links.add(new Link(place, true, Limits.NONE.end()));
            } else {
                if (looks.of(move).contains(dimension)) {
                    Between room = room(place, worked);
                    if (!room.equals(Limits.NONE.end())) {
                        links.add(new Link(place, false, room));
                    }
                }
                worked.add(move.dimension());
            }
        }
        return links;
    }

    private Between room(int place, Set<String> worked) {
        Set<String> seen = new HashSet<>(worked);
        seen.retainAll(looks.of(moves.get(place)));
        return rooms.computeIfAbsent(
                new Look(place, seen), look -> looks.room(moves.get(place), dimension, node, look.worked()));
    }

    /** Larger than this it is never worked on the way: it could be less large for no more. */
    private double far(List<Link> links, double begun) {
        double largest = Double.isNaN(begun) ? 0 : begun;
        double past = 0;
        if (want instanceof Between between) {
            largest = Math.max(largest, between.high());
        }
        for (Link link : links) {
            Move move = moves.get(link.place());
            double least = 0;
            for (Between end : link.own() ? List.<Between>of() : List.of(link.room())) {
                largest = Math.max(largest, finite(end));
            }
            for (Reaching.Way way : link.own() ? reaching.ways(move, node, Set.of()) : List.<Reaching.Way>of()) {
                largest = Math.max(largest, finite(way.limits().end()));
                least = Math.max(least, way.limits().amount().low());
            }
            past += least + move.leaves() + Reaching.HAIR;
        }
        return largest + past;
    }

    private static double finite(Between end) {
        return end.high() == Double.POSITIVE_INFINITY ? end.low() : end.high();
    }

    /** What costs least of where the first of these operations may end. */
    private List<Come> next(List<Come> now, List<Link> links, double far, double stock) {
        List<Come> next = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (Reach reach : reaches(links.getFirst().place(), far)) {
            List<Stretch> into = after(links, far).within(reach.ends()).all();
            for (Come from : now) {
                for (Stroke any : reach.strokes()) {
                    least = onward(from, any.taking(stock), into, least, next);
                }
            }
        }
        double cheapest = least;
        next.removeIf(come -> come.all() > cheapest + Formula.NOTHING);
        return next;
    }

    private static double onward(Come from, Stroke stroke, List<Stretch> into, double least, List<Come> next) {
        double spent = from.spent() + stroke.minutes();
        double best = least;
        if (!stroke.empty() && spent <= best + Formula.NOTHING) {
            Between ended = Double.isNaN(from.low())
                    ? new Between(0, Double.POSITIVE_INFINITY)
                    : stroke.ended(from.low(), from.high());
            for (Stretch stretch : into) {
                double low = Math.max(ended.low(), stretch.low());
                double high = Math.min(ended.high(), stretch.high());
                double all = spent + stretch.minutes();
                if (low <= high + Formula.NOTHING && all <= best + Formula.NOTHING) {
                    best = Math.min(best, all);
                    next.add(new Come(low, Math.max(low, high), spent, all, from, stroke));
                }
            }
        }
        return best;
    }

    /** From the last end, as near the middle of what is wanted as can be, to that of the first operation. */
    private double back(List<Come> last, double begun) {
        double to = want instanceof Between between ? between.middle() : begun;
        Come come = last.getFirst();
        for (Come other : last) {
            if (Math.abs(near(other, to) - to) < Math.abs(near(come, to) - to)) {
                come = other;
            }
        }
        double end = near(come, to);
        while (come.by() != null && come.from() != null && come.from().by() != null) {
            Between from = come.by().begun(end, end);
            come = come.from();
            double low = Math.max(from.low(), come.low());
            end = Math.min(Math.max(low, end), Math.max(low, Math.min(from.high(), come.high())));
        }
        return end;
    }

    private static double near(Come come, double to) {
        return Double.isNaN(to) ? come.low() : Math.min(Math.max(to, come.low()), come.high());
    }

    private List<Reach> reaches(int place, double far) {
        return reaches.computeIfAbsent(new Reached(place, far), _ -> {
            Move move = moves.get(place);
            List<Double> sizes = rack.sizes(move);
            return reaching.of(move, node, Set.of(), far).stream()
                    .map(reach -> sizes.isEmpty() ? reach : reach.at(sizes))
                    .toList();
        });
    }

    /** What is still to be spent once the first of these is done. */
    private Stretches after(List<Link> links, double far) {
        After asked = new After(links, far);
        Stretches before = after.get(asked);
        if (before == null) {
            before = anew(links, far);
            after.put(asked, before);
        }
        return before;
    }

    private Stretches anew(List<Link> links, double far) {
        Move move = moves.get(links.getFirst().place());
        int following = 1;
        while (following < links.size() && !links.get(following).own()) {
            following++;
        }
        Stretches kept = following == links.size()
                ? wanted(move, far)
                : before(links.subList(following, links.size()), far, move.leaves());
        for (Link look : links.subList(1, following)) {
            kept = kept.within(look.room());
        }
        return kept;
    }

    private Stretches before(List<Link> links, double far, double stock) {
        Stretches after = after(links, far);
        return Stretches.least(reaches(links.getFirst().place(), far).stream()
                .flatMap(reach -> reach.before(after, stock).stream())
                .toList());
    }

    private Stretches wanted(Move last, double far) {
        return want instanceof Between between
                ? Stretches.wanted(between, last)
                : new Stretches(List.of(new Stretch(0, far, 0)));
    }
}
