package hornbook.indexer.fit;

import hornbook.indexer.fit.Reasons.Why;
import hornbook.indexer.fit.Refused.Reason;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Tries piece after piece: planned, or refused for a reason. */
final class Trying {
    private static final String NEVER_AGAIN = "celluloid";
    /** Another thread or colour is nearer than a size that is far off. */
    private static final double OTHER_WORD = 0.5;

    private static final double ALIKE = 0.8;

    private final Asked asked;
    private final Aims aims;
    private final Threads threads;
    private final ShopRack rack;
    private final Charges charges;
    private final Minutes minutes;
    final List<Plan> plans = new ArrayList<>();
    final List<No> refused = new ArrayList<>();

    /**
     * A piece that will not do.
     *
     * @param far how far it is from what is wanted
     */
    record No(Piece piece, Why why, double far) {}

    Trying(Asked asked, Threads threads, ShopRack rack, Charges charges, Minutes minutes) {
        this.asked = asked;
        this.aims = new Aims(asked, threads);
        this.threads = threads;
        this.rack = rack;
        this.charges = charges;
        this.minutes = minutes;
    }

    void tried(Piece piece) {
        Aim aim = aims.of(piece);
        Why barred = barred(piece);
        if (barred != null) {
            refused.add(new No(piece, barred, far(aim, piece)));
            return;
        }
        Search search = new Search(aim, rack, charges, minutes, piece);
        search.best().ifPresentOrElse(plans::add, () -> {
            Why why = search.lackedTools() ? lacking(aim, piece) : new Reasons(aim, piece).why();
            refused.add(new No(piece, why, far(aim, piece)));
        });
    }

    /** With every tool there it could be done: then it is the tool that lacks. */
    private Why lacking(Aim aim, Piece piece) {
        return new Search(aim, Rack.FULL, charges, minutes, piece)
                .best()
                .map(plan -> new Why(Reason.LACKS_TOOL, lacking(plan)))
                .orElseGet(() -> new Reasons(aim, piece).why());
    }

    private String lacking(Plan plan) {
        return "lacks " + rack.lacks(plan) + ". With it: " + String.join(", ", plan.work()) + ", "
                + Shown.number(plan.minutes()) + " min";
    }

    private @Nullable Why barred(Piece piece) {
        if (piece.lot().isEmpty()) {
            return null;
        }
        Lot lot = piece.lot().get();
        if (lot.keepsake()) {
            return new Why(Reason.KEEPSAKE, "a keepsake: to measure and copy, never to use");
        }
        if (lot.count().none()) {
            return new Why(Reason.NONE_LEFT, "none left");
        }
        if (lot.reserve() && !asked.reserve()) {
            return new Why(Reason.RESERVE, "set aside (" + lot.count().written() + "): offered only with --reserve");
        }
        if (lot.count() instanceof Count.Exact(int pieces) && pieces < asked.count()) {
            return new Why(Reason.TOO_FEW, "only " + pieces + " there, " + asked.count() + " wanted");
        }
        if (celluloid(lot)) {
            return new Why(Reason.HAZARD, "celluloid: it burns and rots; kept apart, never fitted again");
        }
        return strange(piece, lot);
    }

    private static boolean celluloid(Lot lot) {
        return (lot.material() + " " + lot.title()).toLowerCase(Locale.ROOT).contains(NEVER_AGAIN);
    }

    /** Some kinds have to be of the horn's own model or make. */
    private @Nullable Why strange(Piece piece, Lot lot) {
        String belongs = piece.craft().fitting().belongs();
        if (belongs == null || asked.model().isEmpty()) {
            return null;
        }
        boolean model = lot.fitsModels().contains(asked.model().get().id());
        boolean make = lot.fitsMakes().contains(asked.model().get().make());
        boolean own = (belongs.equals("model") && !lot.fitsModels().isEmpty()) ? model : (make || model);
        return own
                ? null
                : new Why(
                        Reason.DIFFERS,
                        belongs + ": it is not known to be of "
                                + (belongs.equals("model") ? asked.model().get().title() : "this make"));
    }

    /** Each thing wanted counts one at most: how much of it is missing. */
    private double far(Aim aim, Piece piece) {
        Node node = new Node(piece);
        return aim.wants().entrySet().stream()
                .mapToDouble(wanted -> far(wanted.getValue(), node.value(wanted.getKey())))
                .sum();
    }

    private double far(Want want, @Nullable Value value) {
        if (value == null) {
            return 1;
        }
        if (want.met(value)) {
            return 0;
        }
        if (want instanceof Want.Between(double low, double high)
                && value instanceof Value.Amount(double mm, double _)) {
            double gap = Math.max(low - mm, mm - high);
            return Math.min(1, 0.05 + gap / Math.max(high, mm));
        }
        return value instanceof Value.Word(String text) && want instanceof Want.Among(var words)
                ? words.stream().mapToDouble(word -> apart(word, text)).min().orElse(OTHER_WORD)
                : OTHER_WORD;
    }

    /** Threads that start in one another are nearer than those that do not. */
    private double apart(String wanted, String text) {
        return threads.form(wanted)
                .flatMap(one -> threads.form(text)
                        .map(other -> Math.abs(one.major() - other.major()) / one.major()
                                + Math.abs(one.pitch() - other.pitch()) / one.pitch()))
                .map(apart -> OTHER_WORD * (ALIKE + (1 - ALIKE) * Math.min(1, apart)))
                .orElse(OTHER_WORD);
    }
}
