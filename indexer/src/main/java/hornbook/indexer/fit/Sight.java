package hornbook.indexer.fit;

import java.util.Map;
import java.util.Optional;

/** What the names in a check stand for when one operation is put to a piece. */
final class Sight implements Names {
    private static final int DEEPEST = 4;

    private final Node node;
    private final Move move;
    private final Map<String, Value> facts;
    private final Optional<Threads.Form> thread;
    private final double from;
    private final double to;
    private final int n;
    private int depth;

    /**
     * @param facts what belongs to the horn
     * @param thread the one that is to be cut, or the one it has
     * @param from mm; not a number for a word
     * @param n ends, holes or cuts on one piece
     */
    Sight(
            Node node,
            Move move,
            Map<String, Value> facts,
            Optional<Threads.Form> thread,
            double from,
            double to,
            int n) {
        this.node = node;
        this.move = move;
        this.facts = facts;
        this.thread = thread;
        this.from = from;
        this.to = to;
        this.n = n;
    }

    Piece piece() {
        return node.piece;
    }

    @Override
    public double value(String name) {
        return switch (name) {
            case "to" -> to;
            case "from" -> from;
            case "amt" -> Math.abs(to - from);
            case "n" -> n;
            case "len" -> move.zone().map(zone -> zone.value(this)).orElse(Double.NaN);
            case "major" -> thread.map(Threads.Form::major).orElse(Double.NaN);
            case "pitch" -> thread.map(Threads.Form::pitch).orElse(Double.NaN);
            case "pct" -> thread.map(form -> form.percent(value("hole"))).orElse(Double.NaN);
            default -> {
                Formula own = move.names().get(name);
                yield own == null ? stated(name) : deeper(own);
            }
        };
    }

    private double stated(String name) {
        Value fact = facts.get(name);
        boolean told = fact != null && node.piece.assumed().contains(name) && !node.changed.containsKey(name);
        Value value = told ? fact : node.value(name);
        if (value == null) {
            value = fact;
        }
        if (value instanceof Value.Amount(double mm, double _)) {
            return mm;
        }
        Formula formula = node.piece.craft().names().get(name);
        return value != null || formula == null ? Double.NaN : deeper(formula);
    }

    private double deeper(Formula formula) {
        if (depth >= DEEPEST) {
            return Double.NaN;
        }
        depth++;
        try {
            return formula.value(this);
        } finally {
            depth--;
        }
    }
}
