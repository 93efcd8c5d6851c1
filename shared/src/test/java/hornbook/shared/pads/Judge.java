package hornbook.shared.pads;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/** An independent optimum: JGraphT's Hungarian method (Kuhn and Munkres) on the square cost matrix. */
final class Judge {
    // As the sweep's three aims, but small enough that sums stay whole numbers in a double.
    private static final double EMPTY = 1e11;
    private static final double STEP = 1e6;

    private Judge() {}

    /** Least cost of a matrix with no more rows than columns, each row on a column of its own. */
    static double least(double[][] cost) {
        int columns = cost[0].length;
        SimpleWeightedGraph<String, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        List<String> rows = new ArrayList<>();
        List<String> cols = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            rows.add("row " + i);
            cols.add("column " + i);
        }
        rows.forEach(graph::addVertex);
        cols.forEach(graph::addVertex);
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < columns; j++) {
                graph.setEdgeWeight(graph.addEdge(rows.get(i), cols.get(j)), i < cost.length ? cost[i][j] : 0);
            }
        }
        return new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, new HashSet<>(rows), new HashSet<>(cols))
                .getMatching()
                .getWeight();
    }

    /** Least score of cups on the pads of one tray: pads beyond half a millimetre cost as much as none. */
    static Score least(List<Seat> seats, int[] stock) {
        if (seats.isEmpty()) {
            return Score.NOTHING;
        }
        List<Integer> pads = new ArrayList<>();
        for (int size = 0; size < stock.length; size++) {
            for (int i = 0; i < stock[size]; i++) {
                pads.add(size);
            }
        }
        double[][] cost = new double[seats.size()][pads.size() + seats.size()];
        for (int i = 0; i < seats.size(); i++) {
            for (int j = 0; j < cost[i].length; j++) {
                cost[i][j] = j < pads.size() ? cost(seats.get(i), pads.get(j)) : EMPTY;
            }
        }
        double least = least(cost);
        return new Score((int) (least / EMPTY), (int) (least % EMPTY / STEP), Math.round(least % STEP));
    }

    private static double cost(Seat seat, int size) {
        int steps = size - seat.ruled();
        return Math.abs(steps) > 1 ? EMPTY : STEP * Math.abs(steps) + Math.abs(seat.off() - 500 * steps);
    }
}
