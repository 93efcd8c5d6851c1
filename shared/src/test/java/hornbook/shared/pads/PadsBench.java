package hornbook.shared.pads;

import hornbook.shared.measure.PadSize;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import org.jgrapht.Graph;
import org.jgrapht.alg.flow.mincost.CapacityScalingMinimumCostFlow;
import org.jgrapht.alg.flow.mincost.MinimumCostFlowProblem.MinimumCostFlowProblemImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/**
 * Many horns from one shop's trays, every rule in, against a library's minimum cost flow (JGraphT) on sizes and on single
 * pads, and at a fifth of the size against its Hungarian method; in turn, in one run. Arguments: cups, seed, rounds.
 */
public final class PadsBench {
    private static final String[] NAMES = {
        "small-c",
        "b",
        "bis",
        "a",
        "g",
        "fs",
        "f",
        "e",
        "d",
        "gs",
        "alt-fs",
        "side-c",
        "side-bb",
        "side-e",
        "palm-d",
        "palm-eb",
        "palm-f",
        "low-eb",
        "low-c",
        "low-cs",
        "low-b",
        "low-bb",
        "oct-neck",
        "oct-body",
        "high-fs"
    };

    // Processor time of this thread: other work on the machine does not count.
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    /** Of ours a round, so that a round of ours lasts about as long as one of the quickest peer. */
    private static final int CALLS = 25;

    private final List<Cup> cups = new ArrayList<>();
    private final List<Seat> seats = new ArrayList<>();
    private final Tray tray = new Tray(new Tray.Batch("sup-pad-single", "leather", "tan", new BigDecimal("4.0")));

    private PadsBench(int wanted, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < wanted; i++) {
            int place = i % NAMES.length;
            double mm = 9 + 37.0 * ((place * 7) % NAMES.length) / NAMES.length + 3 * random.nextDouble();
            BigDecimal diameter = BigDecimal.valueOf(Math.round(mm * 10), 1);
            cups.add(new Cup("cup-" + NAMES[place], diameter, "j-" + i / NAMES.length, null, null));
            int ruled = HalfSize.ruled(diameter, PadSize.Tie.UP).orElseThrow();
            seats.add(new Seat(ruled, HalfSize.off(diameter, ruled)));
        }
        int[] counts = new int[HalfSize.MOST];
        for (int i = 0; i < wanted * 8 / 3; i++) {
            counts[16 + random.nextInt(80)]++;
        }
        for (int size = 16; size < 96; size++) {
            tray.add(size, Lots.pad("lot-" + size, size, "4.0", counts[size]), true);
        }
    }

    public static void main(String[] args) {
        int cups = args.length > 0 ? Integer.parseInt(args[0]) : 750;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 7;
        int rounds = args.length > 2 ? Integer.parseInt(args[2]) : 7;
        PadsBench whole = new PadsBench(cups, seed);
        PadsBench fifth = new PadsBench(cups / 5, seed);
        System.out.printf("%d cups, %d pads, seed %d%n", cups, cups * 8 / 3, seed);
        whole.against("flow on sizes", whole::flowOnSizes, rounds, true);
        whole.against("flow on pads", whole::flowOnPads, Math.min(rounds, 5), true);
        fifth.against(
                "Hungarian, a fifth", () -> Judge.least(fifth.seats, fifth.tray.stock()), Math.min(rounds, 5), false);
    }

    private Score ours() {
        List<Tray> trays = List.of(tray);
        return Choice.best(seats, trays, new Horns(Goods.PADS, cups, seats, trays).decisions())
                .score();
    }

    private void against(String name, Supplier<Score> peer, int rounds, boolean stepsOnly) {
        for (int i = 0; i < 5000; i++) {
            ours();
        }
        if (stepsOnly && rounds > 5) {
            for (int i = 0; i < 50; i++) {
                peer.get();
            }
        }
        List<Double> ratios = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            long start = CLOCK.getCurrentThreadCpuTime();
            Score mine = new Score(0, 0, 0);
            for (int i = 0; i < CALLS; i++) {
                mine = ours();
            }
            long own = (CLOCK.getCurrentThreadCpuTime() - start) / CALLS;
            start = CLOCK.getCurrentThreadCpuTime();
            Score theirs = peer.get();
            long other = CLOCK.getCurrentThreadCpuTime() - start;
            boolean equal = stepsOnly
                    ? mine.empty() == theirs.empty() && mine.halfSteps() == theirs.halfSteps()
                    : mine.equals(theirs);
            if (!equal) {
                throw new IllegalStateException("unequal: ours " + mine + ", " + name + " " + theirs);
            }
            ratios.add((double) other / own);
            if (round == rounds - 1) {
                System.out.printf(Locale.ROOT, "  ours %.3f ms, %s; %s%n", own / 1e6, name, mine);
            }
        }
        ratios.sort(null);
        System.out.printf(
                Locale.ROOT,
                "  1/%.0f of %s (median; from 1/%.0f to 1/%.0f), equal cost%n",
                ratios.get(ratios.size() / 2),
                name,
                ratios.getFirst(),
                ratios.getLast());
    }

    private Score flowOnSizes() {
        Flow flow = new Flow(cups.size());
        Map<Integer, Integer> wanted = new HashMap<>();
        seats.forEach(seat -> wanted.merge(seat.ruled(), 1, Integer::sum));
        wanted.forEach((ruled, count) -> {
            flow.edge("source", "cups " + ruled, count, 0);
            flow.edge("cups " + ruled, "sink", count, Flow.EMPTY);
            for (int size = ruled - 1; size <= ruled + 1; size++) {
                flow.edge("cups " + ruled, "pads " + size, count, Flow.STEP * Math.abs(size - ruled));
            }
        });
        flow.pads(tray.stock());
        return flow.least();
    }

    private Score flowOnPads() {
        Flow flow = new Flow(cups.size());
        int[] stock = tray.stock();
        for (int cup = 0; cup < seats.size(); cup++) {
            Seat seat = seats.get(cup);
            flow.edge("source", "cup " + cup, 1, 0);
            flow.edge("cup " + cup, "sink", 1, Flow.EMPTY);
            for (int size = seat.ruled() - 1; size <= seat.ruled() + 1; size++) {
                int steps = size - seat.ruled();
                int off = Math.abs(seat.off() - 500 * steps) / 10;
                for (int pad = 0; pad < stock[size]; pad++) {
                    flow.edge("cup " + cup, size + "/" + pad, 1, Flow.STEP * Math.abs(steps) + off);
                }
            }
        }
        for (int size = 0; size < stock.length; size++) {
            for (int pad = 0; pad < stock[size]; pad++) {
                flow.edge(size + "/" + pad, "sink", 1, 0);
            }
        }
        return flow.least();
    }

    /** A minimum cost flow problem by node names. */
    private static final class Flow {
        // The library wants whole costs below 1e9.
        private static final int EMPTY = 100_000_000;
        private static final int STEP = 100_000;

        private final Graph<String, DefaultWeightedEdge> graph =
                new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
        private final Map<DefaultWeightedEdge, Integer> capacity = new HashMap<>();
        private final int supply;

        Flow(int supply) {
            this.supply = supply;
            graph.addVertex("source");
            graph.addVertex("sink");
        }

        void edge(String from, String to, int room, int cost) {
            graph.addVertex(from);
            graph.addVertex(to);
            DefaultWeightedEdge edge = graph.addEdge(from, to);
            graph.setEdgeWeight(edge, cost);
            capacity.put(edge, room);
        }

        void pads(int[] stock) {
            for (int size = 0; size < stock.length; size++) {
                edge("pads " + size, "sink", stock[size], 0);
            }
        }

        Score least() {
            double cost = new CapacityScalingMinimumCostFlow<String, DefaultWeightedEdge>()
                    .getMinimumCostFlow(new MinimumCostFlowProblemImpl<>(
                            graph, v -> v.equals("source") ? supply : v.equals("sink") ? -supply : 0, capacity::get))
                    .getCost();
            return new Score((int) (cost / EMPTY), (int) (cost % EMPTY / STEP), 0);
        }
    }
}
