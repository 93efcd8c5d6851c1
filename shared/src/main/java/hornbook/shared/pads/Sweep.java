package hornbook.shared.pads;

import java.util.Arrays;
import java.util.List;

/**
 * Fills cups from one tray at least cost, exactly.
 *
 * <p>Goes along the half-millimetre line once. Between two neighbouring sizes only the net loan matters: a cup that takes
 * from above while one above takes from below would both gain by swapping. So the state is the number of pads lent to
 * the next size (borrowed from it where negative), and no more than is missing further on: a loan to a size that has a
 * pad to spare would be a step for nothing.
 */
final class Sweep {
    // One number for the three aims, each far above all that the next can add up to for 100 000 cups.
    private static final long EMPTY = 1L << 46;
    private static final long STEP = 1L << 28;
    // A cup's number fits into these bits, its distance from the ruled size into this many micrometres.
    private static final long CUP = (1L << 20) - 1;
    private static final long STEPS = 10_000;
    private static final long NEVER = Long.MAX_VALUE;
    private static final Rung NO_CUPS = new Rung(new int[0], new int[0]);

    private final int first;
    private final Rung[] rungs;
    private final int[] pads;
    private final int[] most;
    private final int[] borrow;

    /** Sizes of the cups in the order given, 0 where a cup stays empty. */
    record Filled(int[] sizes, Score score) {
        static final Filled NOTHING = new Filled(new int[0], Score.NOTHING);
    }

    private Sweep(int first, Rung[] rungs, int[] pads) {
        this.first = first;
        this.rungs = rungs;
        this.pads = pads;
        this.most = mostLent();
        this.borrow = mostBorrowed();
    }

    /**
     * @param stock pads on hand by half millimetres; what is beyond its end is none
     */
    static Filled fill(List<Seat> seats, int[] stock) {
        if (seats.isEmpty()) {
            return Filled.NOTHING;
        }
        long[] order = byDiameter(seats);
        int low = seats.get((int) (order[0] & CUP)).ruled() - 1;
        int high = seats.get((int) (order[order.length - 1] & CUP)).ruled() + 1;
        int[] pads = new int[high - low + 1];
        for (int i = 0; i < pads.length; i++) {
            pads[i] = low + i >= 0 && low + i < stock.length ? stock[low + i] : 0;
        }
        return new Sweep(low, rungs(seats, order, low, pads.length), pads).run(seats.size());
    }

    /** Numbers of the cups in their low bits, in order of ruled size and, within it, of diameter. */
    private static long[] byDiameter(List<Seat> seats) {
        long[] order = new long[seats.size()];
        for (int cup = 0; cup < order.length; cup++) {
            Seat seat = seats.get(cup);
            order[cup] = ((long) seat.ruled() * STEPS + seat.off()) * (CUP + 1) + cup;
        }
        Arrays.sort(order);
        return order;
    }

    private static Rung[] rungs(List<Seat> seats, long[] order, int low, int sizes) {
        Rung[] rungs = new Rung[sizes];
        Arrays.fill(rungs, NO_CUPS);
        int from = 0;
        while (from < order.length) {
            int ruled = seats.get((int) (order[from] & CUP)).ruled();
            int to = from;
            while (to < order.length && seats.get((int) (order[to] & CUP)).ruled() == ruled) {
                to++;
            }
            rungs[ruled - low] = rung(seats, order, from, to);
            from = to;
        }
        return rungs;
    }

    private static Rung rung(List<Seat> seats, long[] order, int from, int to) {
        int[] cups = new int[to - from];
        int[] off = new int[to - from];
        for (int i = 0; i < cups.length; i++) {
            cups[i] = (int) (order[from + i] & CUP);
            off[i] = seats.get(cups[i]).off();
        }
        return new Rung(cups, off);
    }

    private Filled run(int cups) {
        int[][] from = new int[rungs.length][];
        long[] best = {0};
        int borrowed = 0;
        for (int at = 0; at < rungs.length; at++) {
            long[] next = new long[borrow[at] + most[at] + 1];
            from[at] = new int[next.length];
            Arrays.fill(next, NEVER);
            for (int out = -borrow[at]; out <= most[at]; out++) {
                for (int in = -borrowed; in < best.length - borrowed; in++) {
                    long cost = cost(at, in, out);
                    long before = best[in + borrowed];
                    if (cost != NEVER && before != NEVER && before + cost < next[out + borrow[at]]) {
                        next[out + borrow[at]] = before + cost;
                        from[at][out + borrow[at]] = in;
                    }
                }
            }
            best = next;
            borrowed = borrow[at];
        }
        return new Filled(sizes(from, cups), score(best[0]));
    }

    /** Pads of each size that cups of the next may take: what the next lacks for its own cups and for those it lends to. */
    private int[] mostLent() {
        int[] lent = new int[rungs.length];
        for (int at = rungs.length - 2; at >= 0; at--) {
            int lacking = Math.max(0, rungs[at + 1].size() + lent[at + 1] - pads[at + 1]);
            lent[at] = Math.min(lacking, Math.min(pads[at], rungs[at + 1].size()));
        }
        return lent;
    }

    /** Pads of the next size that cups of each may take, likewise. */
    private int[] mostBorrowed() {
        int[] taken = new int[rungs.length];
        for (int at = 0; at + 1 < rungs.length; at++) {
            int lacking = Math.max(0, rungs[at].size() + (at == 0 ? 0 : taken[at - 1]) - pads[at]);
            taken[at] = Math.min(lacking, Math.min(rungs[at].size(), pads[at + 1]));
        }
        return taken;
    }

    /** How many of this size's cups stay on it: as many as cups and pads are left for. */
    private int stay(int at, int in, int out) {
        int cupsLeft = rungs[at].size() - Math.max(in, 0) - Math.max(-out, 0);
        int padsLeft = pads[at] - Math.max(-in, 0) - Math.max(out, 0);
        return Math.min(cupsLeft, padsLeft);
    }

    private long cost(int at, int in, int out) {
        int stay = stay(at, in, out);
        if (stay < 0) {
            return NEVER;
        }
        int down = Math.max(in, 0);
        int up = Math.max(-out, 0);
        long empty = rungs[at].size() - down - up - stay;
        return empty * EMPTY + (down + up) * STEP + rungs[at].off(down, stay, up);
    }

    private int[] sizes(int[][] from, int cups) {
        int[] sizes = new int[cups];
        int out = 0;
        for (int at = rungs.length - 1; at >= 0; at--) {
            int in = from[at][out + borrow[at]];
            rungs[at].write(first + at, Math.max(in, 0), stay(at, in, out), Math.max(-out, 0), sizes);
            out = in;
        }
        return sizes;
    }

    private static Score score(long cost) {
        return new Score((int) (cost / EMPTY), (int) (cost % EMPTY / STEP), cost % STEP);
    }
}
