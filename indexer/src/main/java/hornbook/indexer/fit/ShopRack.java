package hornbook.indexer.fit;

import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Size;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.MemberState;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.shop.ToolMember;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The tools of this shop, and the members of its sets. */
final class ShopRack implements Rack {
    /** A collet or punch serves a size this near, mm (common practice). */
    private static final double NEAR = 0.05;
    /** A drill or reamer leaves its own size, to the rounding of how it is written, mm. */
    private static final double OWN = 1e-3;

    private static final Set<String> GONE = Set.of("lent", "missing", "broken");

    private final Map<String, ShopTool> tools = new HashMap<>();
    private final List<Held> held = new ArrayList<>();
    private final SizeReader reader;
    /** Whether what is lent, missing or broken counts as there and good. */
    private final boolean mended;

    /** A member of a set, its size read. */
    record Held(ToolMember member, Optional<String> thread, double mm) {
        boolean good() {
            return member.state() == MemberState.GOOD || member.state() == MemberState.WORN;
        }
    }

    ShopRack(List<ShopTool> tools, List<ToolMember> members, SizeReader reader, Threads threads) {
        this.reader = reader;
        this.mended = false;
        tools.forEach(tool -> this.tools.put(tool.id(), tool));
        members.forEach(member -> held.add(held(member, threads)));
    }

    private ShopRack(ShopRack as) {
        reader = as.reader;
        mended = true;
        tools.putAll(as.tools);
        held.addAll(as.held);
    }

    /** The same rack with every tool back, and good. */
    ShopRack mended() {
        return new ShopRack(this);
    }

    /** Whether a tool that an order of work might want is known to the shop and is not to be had. */
    boolean wants(Craft craft, Aim aim) {
        return craft.moves().stream()
                .anyMatch(move -> gone(move).isPresent()
                        || ofKind(move).stream().anyMatch(member -> !member.good() && serves(move, member, aim)));
    }

    private static boolean serves(Move move, Held member, Aim aim) {
        if (member.thread().isPresent()) {
            return aim.wants().get("thread") instanceof Want.Among among
                    && among.met(new Value.Word(member.thread().get()));
        }
        return !"to".equals(move.working().memberSize())
                || (aim.wants().get(move.dimension()) instanceof Want.Between want && want.met(Value.of(member.mm())));
    }

    private Optional<ShopTool> gone(Move move) {
        return move.operation().tools().stream()
                .flatMap(id -> tool(id).stream())
                .filter(tool -> !mended && GONE.contains(tool.state().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    private boolean good(Held member) {
        return mended || member.good();
    }

    private Held held(ToolMember member, Threads threads) {
        boolean cutsThreads = member.kind().equals("die") || member.kind().equals("tap");
        Optional<String> thread =
                cutsThreads ? threads.form(member.member()).map(Threads.Form::designation) : Optional.empty();
        return new Held(member, thread, cutsThreads ? Double.NaN : mm(member.member()));
    }

    private double mm(String text) {
        String size = text.matches("[A-Z]") ? text + " drill" : text;
        return reader.measured(size, LengthUnit.MILLIMETRE)
                .found()
                .map(Measured::nominal)
                .map(length -> length.mm())
                .orElse(Double.NaN);
    }

    Optional<ShopTool> tool(String id) {
        return Optional.ofNullable(tools.get(id));
    }

    /** Whether the shop has no list of the members that an operation wants. */
    boolean unlisted(Move move) {
        return move.working().member() != null && ofKind(move).isEmpty();
    }

    private List<Held> ofKind(Move move) {
        return held.stream()
                .filter(h -> h.member().kind().equals(move.working().member()))
                .filter(h -> move.operation().tools().contains(h.member().set()))
                .toList();
    }

    @Override
    public Optional<String> lacks(Move move, Value to, Sight sight) {
        Optional<ShopTool> gone = gone(move);
        if (gone.isPresent()) {
            return Optional.of(gone.get().title() + " (" + gone.get().state() + ")");
        }
        if (move.working().member() == null || unlisted(move) || apart(move, to).isPresent()) {
            return Optional.empty();
        }
        List<Held> fit = fitting(move, to, sight);
        if (fit.stream().anyMatch(this::good)) {
            return Optional.empty();
        }
        String wanted = move.working().member() + " " + size(move, to, sight);
        return Optional.of(
                fit.isEmpty()
                        ? "no " + wanted + " in the shop's list"
                        : wanted + ": " + state(fit.getFirst().member()));
    }

    /** All that a plan lacks, in words. */
    String lacks(Plan plan) {
        return plan.end().steps.stream()
                .flatMap(done -> lacks(done.move(), done.to(), done.sight()).stream())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static String state(ToolMember member) {
        String lent = member.lentTo() == null ? "" : " to " + member.lentTo();
        String since = member.since() == null ? "" : " since " + member.since();
        return member.state().name().toLowerCase(Locale.ROOT)
                + lent
                + since
                + (member.note().isEmpty() ? "" : ", " + member.note());
    }

    /** The members of that size, the good ones first. */
    List<Held> fitting(Move move, Value to, Sight sight) {
        if ("thread".equals(move.working().memberSize())) {
            return ofKind(move).stream()
                    .filter(h -> h.thread().filter(to.shown()::equals).isPresent())
                    .toList();
        }
        double wanted = wanted(move, sight);
        double near = "to".equals(move.working().memberSize()) ? OWN : NEAR;
        return ofKind(move).stream()
                .filter(h -> Double.isNaN(wanted) || Math.abs(h.mm() - wanted) <= near + Formula.NOTHING)
                .sorted(java.util.Comparator.comparing((Held h) -> !h.good())
                        .thenComparingDouble(h -> Math.abs(h.mm() - wanted)))
                .toList();
    }

    /** What the piece measures in truth: a reamer, drill or punch leaves its own size. */
    Value leaves(Move move, Value to, Sight sight) {
        boolean own = "to".equals(move.working().memberSize()) && to instanceof Value.Amount;
        return own
                ? fitting(move, to, sight).stream()
                        .filter(this::good)
                        .findFirst()
                        .map(member -> Value.of(member.mm()))
                        .orElse(to)
                : to;
    }

    private static double wanted(Move move, Sight sight) {
        return sight.value(java.util.Objects.requireNonNull(move.working().memberSize()));
    }

    private static String size(Move move, Value to, Sight sight) {
        return "thread".equals(move.working().memberSize()) ? to.shown() : Shown.mm(wanted(move, sight));
    }

    /** A single tap or die that lies apart from the set, known by its name. */
    Optional<ShopTool> apart(Move move, Value to) {
        String kind = move.working().member();
        if (kind == null || !"thread".equals(move.working().memberSize())) {
            return Optional.empty();
        }
        return tools.values().stream()
                .filter(tool -> tool.id().startsWith("tool-" + kind + "-")
                        && !GONE.contains(tool.state().toLowerCase(Locale.ROOT)))
                .filter(tool -> reader.mentions(tool.title()).stream()
                        .anyMatch(mention -> mention.size() instanceof Size.OfThread(var meanings)
                                && meanings.stream()
                                        .anyMatch(t -> t.designation().equals(to.shown()))))
                .findFirst();
    }

    @Override
    public List<Double> sizes(Move move) {
        return "to".equals(move.working().memberSize())
                ? ofKind(move).stream()
                        .filter(this::good)
                        .map(Held::mm)
                        .filter(mm -> !mm.isNaN())
                        .distinct()
                        .toList()
                : List.of();
    }
}
