package hornbook.indexer.fit;

import hornbook.indexer.fit.Refused.Reason;
import hornbook.indexer.fit.Want.Between;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Says why a piece cannot be made to fit: the first thing wanted that no single operation reaches. */
final class Reasons {
    private final Aim aim;
    private final Piece piece;
    private final Node node;

    /** One reason in one word and in words. */
    record Why(Reason reason, String words) {}

    Reasons(Aim aim, Piece piece) {
        this.aim = aim;
        this.piece = piece;
        this.node = new Node(piece);
    }

    Why why() {
        List<String> unmet = new ArrayList<>();
        for (Map.Entry<String, Want> wanted : aim.wants().entrySet()) {
            String dimension = wanted.getKey();
            if (aim.unmet(node, dimension)) {
                Why why = of(dimension, wanted.getValue());
                if (why != null) {
                    return why;
                }
                unmet.add(dimension);
            }
        }
        return new Why(Reason.NO_WAY, String.join(" and ", unmet) + ": no order of work brings it there");
    }

    private @Nullable Why of(String dimension, Want want) {
        Value value = node.value(dimension);
        List<Move> moves = piece.craft().on(dimension);
        if (value == null) {
            return moves.stream().anyMatch(m -> m.sets() && m.working().starts().isEmpty())
                    ? null
                    : new Why(
                            Reason.NOT_WRITTEN,
                            "its " + dimension + " is not written down: measure it, then ask again");
        }
        return switch (want) {
            case Between between
            when value instanceof Value.Amount(double mm, double _) -> size(dimension, between, mm, moves);
            case Between between -> word(dimension, between, value, moves);
            case Want.Among among -> word(dimension, among, value, moves);
        };
    }

    private @Nullable Why word(String dimension, Want want, Value value, List<Move> moves) {
        List<String> broken = new ArrayList<>();
        for (Move move : moves) {
            if (new Permit(aim, Rack.FULL).starts(move, value)) {
                for (Value to : brought(move, want)) {
                    String no = broken(move, value, to);
                    if (no == null) {
                        return null;
                    }
                    broken.add(no);
                }
            }
        }
        String differs = dimension + " " + value.shown() + ", not " + want.shown();
        String threadCut = cutAway(dimension, moves) ? " (cut away, it is too short)" : "";
        return broken.isEmpty()
                ? new Why(Reason.DIFFERS, differs + threadCut)
                : new Why(Reason.NOT_ALLOWED, differs + "; " + String.join("; ", broken));
    }

    private boolean cutAway(String dimension, List<Move> moves) {
        return !moves.isEmpty()
                && piece.craft().ends().values().stream()
                        .anyMatch(end -> end.loses().containsKey(dimension));
    }

    /** What an operation can bring about of what is wanted. */
    private List<Value> brought(Move move, Want want) {
        return switch (want) {
            case Want.Among(var words) -> Ends.given(move, node, aim, words);
            case Between between
            when move.sets() && move.working().gives().isEmpty() -> List.of(Value.of(between.middle()));
            case Between between -> Ends.numbers(move, between, null);
        };
    }

    private @Nullable Why size(String dimension, Between want, double mm, List<Move> moves) {
        double end = mm < want.low() ? want.low() : want.high();
        List<Move> able = moves.stream()
                .filter(m -> m.sets() || (mm > end ? m.makesSmaller() : m.makesLarger()))
                .filter(m -> chained(m, moves) || 2 * m.accuracy() <= want.high() - want.low() + Formula.NOTHING)
                .filter(m -> !(m.sets() && "larger".equals(m.working().only()) && mm > end))
                .toList();
        if (able.isEmpty()) {
            return notWorked(dimension, want, mm);
        }
        List<String> over = new ArrayList<>();
        List<String> broken = new ArrayList<>();
        for (Move move : able) {
            String no = over(move, mm, end);
            if (no != null) {
                over.add(no);
                continue;
            }
            no = broken(move, Value.of(mm), Value.of(end));
            if (no == null) {
                return null;
            }
            broken.add(no);
        }
        List<String> all = new ArrayList<>(over);
        all.addAll(broken);
        return new Why(
                over.isEmpty() ? Reason.NOT_ALLOWED : Reason.OVER_LIMIT,
                dimension + " " + Shown.number(mm) + ", " + want.shown() + " wanted: " + String.join("; ", all));
    }

    private static boolean chained(Move move, List<Move> moves) {
        return moves.stream().anyMatch(m -> m.order() > move.order());
    }

    private Why notWorked(String dimension, Between want, double mm) {
        String asked = Shown.number(mm) + ", " + want.shown() + " wanted";
        return mm < want.low()
                ? new Why(Reason.TOO_SMALL, dimension + " too small: " + asked + "; what is gone is not put back")
                : new Why(Reason.TOO_LARGE, dimension + " too large: " + asked + "; it is not worked smaller");
    }

    /** By how much an operation would have to go past its own limit. */
    private @Nullable String over(Move move, double mm, double end) {
        Double most = move.operation().maxAmount();
        if (most == null || move.sets()) {
            return null;
        }
        double past = Math.abs(mm - end) - most * move.most();
        return past <= Formula.NOTHING
                ? null
                : String.format(
                        "%s takes %s at most, %s is %s too much",
                        lower(move.operation().title()),
                        Shown.mm(most * move.most()),
                        Shown.number(Math.abs(mm - end)),
                        Shown.number(past));
    }

    private @Nullable String broken(Move move, Value from, Value to) {
        Sight sight = aim.sight(node, move, from, to, move.most());
        return move.check()
                .broken(sight)
                .or(() -> move.whenKnown().flatMap(check -> check.broken(sight)))
                .map(c -> lower(move.operation().title()) + " wants " + CheckWords.in(c.text()) + ": it would be "
                        + Shown.number(c.left().value(sight)) + " against "
                        + Shown.number(c.right().value(sight)))
                .orElse(null);
    }

    private static String lower(String title) {
        return title.isEmpty() ? title : Character.toLowerCase(title.charAt(0)) + title.substring(1);
    }
}
