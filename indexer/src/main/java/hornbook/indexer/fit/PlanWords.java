package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Tool;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.ShopTool;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A plan as it is shown. */
final class PlanWords {
    /** How a note says so itself. */
    private static final String ON_HORN = "parts horn";

    private final Asked asked;
    private final ShopRack rack;
    private final Places places;
    private final Minutes minutes;
    private final Condition condition;
    private final WithTool withTool;
    private final Catalogue catalogue;

    PlanWords(Asked asked, ShopFloor floor, WithTool withTool, Catalogue catalogue) {
        this.asked = asked;
        this.rack = floor.rack();
        this.places = floor.places();
        this.minutes = floor.minutes();
        this.condition = floor.condition();
        this.withTool = withTool;
        this.catalogue = catalogue;
    }

    FitPlan of(Plan plan) {
        Node end = plan.end();
        Optional<Lot> lot = end.piece.lot();
        String lies = lot.map(Lot::lies).orElse(null);
        boolean reserve = lot.filter(Lot::reserve).isPresent();
        return new FitPlan(
                end.piece.id(),
                lot.map(Lot::title).orElse("the piece in hand"),
                lies,
                places.label(lies),
                lot.map(l -> l.count().written()).orElse(null),
                Shown.toPlaces(plan.minutes(), 2),
                Shown.toPlaces(plan.charge(), 2),
                Shown.toPlaces(plan.total(), 2),
                end.steps.stream()
                        .sorted(Comparator.comparingInt(done -> done.move().order()))
                        .map(this::step)
                        .toList(),
                reserve,
                reserve ? left(lot.orElseThrow()) : null,
                tools(end),
                withTool.than(plan).orElse(null),
                end.steps.stream()
                        .flatMap(done -> asks(done).stream())
                        .distinct()
                        .toList(),
                assumed(end),
                shows(end.piece),
                mind(plan, lot),
                end.steps.stream()
                        .map(done -> done.move().operation().caution())
                        .filter(java.util.Objects::nonNull)
                        .distinct()
                        .toList());
    }

    private @Nullable Integer left(Lot lot) {
        return lot.count() instanceof Count.Exact(int pieces) ? pieces - asked.count() : null;
    }

    private FitStep step(Node.Done done) {
        Move move = done.move();
        Value to = rack.leaves(move, done.to(), done.sight());
        double changed = changed(done, to);
        boolean size = !Double.isNaN(changed) && move.working().gives().isEmpty();
        return new FitStep(
                move.id(),
                move.operation().title(),
                move.dimension(),
                done.sight().piece().craft().along(move.dimension()),
                size ? Shown.toPlaces(changed, 3) : done.n() * asked.count(),
                size ? "mm" : move.operation().perUnit(),
                done.from() == null ? null : done.from().shown(),
                done.from() == null && !size ? "done" : to.shown(),
                keeps(done),
                Shown.toPlaces(done.minutes(), 2),
                minutes.clocked(move),
                move.operation().preconditions());
    }

    private static double changed(Node.Done done, Value to) {
        return done.from() instanceof Value.Amount(double from, double _)
                        && to instanceof Value.Amount(double mm, double _)
                ? Math.abs(mm - from)
                : done.sight().value("amt");
    }

    private static @Nullable String keeps(Node.Done done) {
        Set<String> ends = done.sight().piece().craft().ends().keySet();
        return done.end() == null || ends.size() < 2 ? null : "from the " + done.end() + " end";
    }

    private static List<String> asks(Node.Done done) {
        if (done.asks().isEmpty()) {
            return List.of();
        }
        String words = done.move().operation().preconditions();
        return List.of(done.move().operation().title() + ": measure first " + CheckWords.of(done.asks())
                + (words == null ? "" : "; " + words));
    }

    /** What was taken for granted in this plan and stands in no record. */
    private List<String> assumed(Node end) {
        Set<String> used = new LinkedHashSet<>();
        for (Node.Done done : end.steps) {
            used.add(done.move().dimension());
            done.move().zone().ifPresent(zone -> used.addAll(zone.names()));
            end.piece.craft().zone(done.move().dimension()).ifPresent(zone -> used.addAll(zone.names()));
            done.move().check().all().forEach(c -> {
                used.addAll(c.left().names());
                used.addAll(c.right().names());
            });
            if (done.move().takesEnd()) {
                end.piece
                        .craft()
                        .ends()
                        .values()
                        .forEach(e -> e.loses().keySet().forEach(lost -> {
                            used.add(lost);
                            end.piece.craft().zone(lost).ifPresent(zone -> used.addAll(zone.names()));
                        }));
            }
        }
        return end.piece.assumed().stream()
                .filter(name -> used.contains(name) && !asked.facts().containsKey(name))
                .sorted()
                .map(name -> words(name, end.piece.value(name)))
                .toList();
    }

    private static String words(String name, @Nullable Value value) {
        String shown = value == null ? "" : value.shown();
        return switch (name) {
            case "tlen" -> "thread " + shown + " mm long";
            case "slot" -> shown.equals("1") ? "has a slot" : "no slot";
            case "plain" -> "the rest plain";
            default -> name + " " + shown;
        };
    }

    private Map<String, String> shows(Piece piece) {
        Map<String, String> shows = new TreeMap<>();
        piece.has().forEach((name, value) -> {
            if (!asked.wants().containsKey(name) && !piece.assumed().contains(name)) {
                shows.put(name, value.shown());
            }
        });
        return new LinkedHashMap<>(shows);
    }

    private List<String> mind(Plan plan, Optional<Lot> lot) {
        List<String> mind = new ArrayList<>();
        if (lot.isPresent()) {
            if (places.partsHorn(lot.get().lies()) && !lot.get().note().contains(ON_HORN)) {
                mind.add("still on a parts horn: take it off and book it first");
            }
            mind.addAll(condition.amiss(lot.get()));
            if (!lot.get().note().isEmpty()) {
                mind.add(lot.get().note());
            }
            if (new Charges(asked.model()).foreign(plan.end().piece)) {
                mind.add("made for another make: prove it on the horn");
            }
        }
        if (plan.charge() > 0) {
            mind.add("charged " + Shown.number(Shown.toPlaces(plan.charge(), 2)) + ": " + charged(plan));
        }
        return mind;
    }

    private static String charged(Plan plan) {
        Piece piece = plan.end().piece;
        if (plan.end().steps.isEmpty() && piece.craft().fitting().charge() != null) {
            return "its size is not quite the one it is for";
        }
        return piece.of().words() + (plan.end().sawn > 0 ? ", " + Shown.mm(plan.end().sawn) + " sawn off" : "");
    }

    private List<ToolWanted> tools(Node end) {
        Map<String, ToolWanted> tools = new LinkedHashMap<>();
        for (Node.Done done : end.steps) {
            for (String id : done.move().operation().tools()) {
                ToolWanted tool = tool(id, member(done, id));
                tools.merge(id, tool, (had, more) -> more.member() == null ? had : more);
            }
            rack.apart(done.move(), done.to()).ifPresent(own -> tools.put(own.id(), tool(own.id(), null)));
        }
        return List.copyOf(tools.values());
    }

    private @Nullable String member(Node.Done done, String set) {
        if (done.move().working().member() == null) {
            return null;
        }
        return rack.fitting(done.move(), done.to(), done.sight()).stream()
                .filter(held -> held.good() && held.member().set().equals(set))
                .findFirst()
                .map(held -> held.member().kind() + " " + held.member().member())
                .orElse(null);
    }

    private ToolWanted tool(String id, @Nullable String member) {
        Optional<ShopTool> own = rack.tool(id);
        String title = own.map(ShopTool::title)
                .or(() -> Optional.ofNullable(catalogue.all(Tool.class).get(id)).map(Tool::title))
                .orElse(id);
        String lies = own.map(tool -> tool.drawer() != null ? tool.drawer() : tool.place())
                .orElse(null);
        String note = own.isEmpty()
                ? "not in the shop's list of tools"
                : List.of(
                                own.get().state().equals("good")
                                        ? ""
                                        : own.get().state(),
                                own.get().note())
                        .stream()
                        .filter(text -> !text.isEmpty())
                        .collect(Collectors.joining("; "));
        return new ToolWanted(id, title, member, lies, places.label(lies), note.isEmpty() ? null : note);
    }
}
