package hornbook.shared.pads;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Chooses trays for cups so that all of them together cost least: branch and bound over the decisions, each tray filled
 * by the {@link Sweep}.
 */
final class Choice {
    /** More than any shop's tray has needed; past it the best found stands and says that it may not be the least. */
    private static final int PATIENCE = 20_000;

    private final List<Seat> seats;
    private final List<Tray> trays;
    private final List<List<Integer>> cupsOf = new ArrayList<>();
    private final List<Sweep.Filled> filled = new ArrayList<>();
    private Score unserved = Score.NOTHING;
    private int looked;
    private Result best;

    /**
     * @param sizes half millimetres of each cup, 0 where it stays empty
     * @param trays number of each cup's tray, {@link Placement#NONE} where no tray fits it
     * @param proven is nothing cheaper possible?
     */
    record Result(int[] sizes, int[] trays, Score score, boolean proven) {}

    private Choice(List<Seat> seats, List<Tray> trays) {
        this.seats = seats;
        this.trays = trays;
        trays.forEach(tray -> {
            cupsOf.add(new ArrayList<>());
            filled.add(Sweep.Filled.NOTHING);
        });
        this.best = new Result(new int[0], new int[0], new Score(Integer.MAX_VALUE, 0, 0), false);
    }

    static Result best(List<Seat> seats, List<Tray> trays, List<Decision> decisions) {
        Choice choice = new Choice(seats, trays);
        decisions.stream()
                .filter(Decision::forced)
                .flatMap(d -> d.alternatives().getFirst().placements().stream())
                .forEach(choice::place);
        for (int tray = 0; tray < trays.size(); tray++) {
            choice.refill(tray);
        }
        Deque<Decision> open = new ArrayDeque<>();
        decisions.stream().filter(d -> !d.forced()).forEach(open::addLast);
        choice.decide(open);
        return choice.result();
    }

    private void decide(Deque<Decision> open) {
        if (open.isEmpty()) {
            keep();
            return;
        }
        Decision next = open.removeFirst();
        Score rest = open.stream().map(Decision::least).reduce(Score.NOTHING, Score::plus);
        for (Decision.Alternative way : next.alternatives()) {
            if (total().plus(way.least()).plus(rest).compareTo(best.score()) >= 0 || looked > PATIENCE) {
                continue;
            }
            follow(way, open, rest);
        }
        open.addFirst(next);
    }

    private void follow(Decision.Alternative way, Deque<Decision> open, Score rest) {
        looked++;
        List<Integer> touched =
                way.placements().stream().map(Placement::tray).distinct().toList();
        List<Sweep.Filled> before = List.copyOf(filled);
        way.placements().forEach(this::place);
        touched.forEach(this::refill);
        Score later = way.then().stream().map(Decision::least).reduce(rest, Score::plus);
        if (total().plus(later).compareTo(best.score()) < 0) {
            way.then().reversed().forEach(open::addFirst);
            decide(open);
            way.then().forEach(_ -> open.removeFirst());
        }
        way.placements().reversed().forEach(this::take);
        for (int tray = 0; tray < before.size(); tray++) {
            filled.set(tray, before.get(tray));
        }
    }

    private void place(Placement placement) {
        if (placement.tray() == Placement.NONE) {
            unserved = new Score(unserved.empty() + placement.cups().size(), 0, 0);
        } else {
            cupsOf.get(placement.tray()).addAll(placement.cups());
        }
    }

    private void take(Placement placement) {
        if (placement.tray() == Placement.NONE) {
            unserved = new Score(unserved.empty() - placement.cups().size(), 0, 0);
        } else {
            List<Integer> cups = cupsOf.get(placement.tray());
            cups.subList(cups.size() - placement.cups().size(), cups.size()).clear();
        }
    }

    private void refill(int tray) {
        if (tray != Placement.NONE) {
            List<Seat> mine = new ArrayList<>();
            cupsOf.get(tray).forEach(cup -> mine.add(seats.get(cup)));
            filled.set(tray, Sweep.fill(mine, trays.get(tray).stock()));
        }
    }

    private Score total() {
        return filled.stream().map(Sweep.Filled::score).reduce(unserved, Score::plus);
    }

    private void keep() {
        Score total = total();
        if (total.compareTo(best.score()) >= 0) {
            return;
        }
        int[] sizes = new int[seats.size()];
        int[] from = new int[seats.size()];
        java.util.Arrays.fill(from, Placement.NONE);
        for (int tray = 0; tray < trays.size(); tray++) {
            int[] taken = filled.get(tray).sizes();
            for (int i = 0; i < taken.length; i++) {
                int cup = cupsOf.get(tray).get(i);
                sizes[cup] = taken[i];
                from[cup] = tray;
            }
        }
        best = new Result(sizes, from, total, true);
    }

    private Result result() {
        return new Result(best.sizes(), best.trays(), best.score(), looked <= PATIENCE);
    }
}
