package hornbook.shared.pads;

import hornbook.shared.pads.Decision.Alternative;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What is to be decided for each horn: one look for it, and within the look a batch for each of its units. */
final class Horns {
    private final Goods goods;
    private final List<Cup> cups;
    private final List<Seat> seats;
    private final List<Tray> trays;
    private final Map<Thickness, List<Integer>> known = new HashMap<>();

    Horns(Goods goods, List<Cup> cups, List<Seat> seats, List<Tray> trays) {
        this.goods = goods;
        this.cups = cups;
        this.seats = seats;
        this.trays = trays;
    }

    List<Decision> decisions() {
        Map<String, List<Integer>> horns = new LinkedHashMap<>();
        for (int cup = 0; cup < cups.size(); cup++) {
            String job = cups.get(cup).job();
            horns.computeIfAbsent(job == null ? "" : job, j -> new ArrayList<>())
                    .add(cup);
        }
        List<Decision> decisions = new ArrayList<>();
        horns.values().forEach(horn -> decide(horn, decisions));
        return decisions;
    }

    private void decide(List<Integer> horn, List<Decision> decisions) {
        List<Integer> first = options(cups.get(horn.getFirst()).thickness());
        if (first.size() == 1
                && horn.stream()
                        .allMatch(cup -> options(cups.get(cup).thickness()).equals(first))) {
            decisions.add(only(new Placement(horn, first.getFirst(), Score.NOTHING)));
            return;
        }
        List<Unit> units = Unit.of(goods, horn, cups);
        units.stream()
                .filter(Unit::ownLook)
                .map(unit -> decision(unit, options(unit.thickness()), false))
                .forEach(decisions::add);
        List<Unit> rest = units.stream().filter(u -> !u.ownLook()).toList();
        if (!rest.isEmpty()) {
            decisions.add(look(rest));
        }
    }

    private static Decision only(Placement placement) {
        return new Decision(List.of(new Alternative(List.of(placement), List.of())));
    }

    private Decision look(List<Unit> units) {
        List<String> looks = units.stream()
                .map(unit -> options(unit.thickness()))
                .distinct()
                .flatMap(List::stream)
                .map(tray -> trays.get(tray).look)
                .distinct()
                .toList();
        if (looks.isEmpty()) {
            return new Decision(List.of(new Alternative(
                    units.stream()
                            .map(unit -> placement(unit, Placement.NONE, false))
                            .toList(),
                    List.of())));
        }
        boolean weigh = looks.size() > 1;
        return new Decision(
                looks.stream().map(look -> alternative(units, look, weigh)).toList());
    }

    private Alternative alternative(List<Unit> units, String look, boolean weigh) {
        List<Placement> placements = new ArrayList<>();
        List<Decision> then = new ArrayList<>();
        for (Unit unit : units) {
            List<Integer> options = options(unit.thickness()).stream()
                    .filter(tray -> trays.get(tray).look.equals(look))
                    .toList();
            Decision decision = decision(unit, options, weigh);
            if (decision.forced()) {
                placements.addAll(decision.alternatives().getFirst().placements());
            } else {
                then.add(decision);
            }
        }
        return new Alternative(placements, then);
    }

    /** @param weigh is it one of several ways, to be compared with the others by what it is worth alone? */
    private Decision decision(Unit unit, List<Integer> options, boolean weigh) {
        List<Integer> within =
                options.stream().filter(tray -> reaches(tray, unit)).toList();
        List<Integer> any = within.isEmpty() ? options.stream().limit(1).toList() : within;
        List<Integer> chosen = any.isEmpty() ? List.of(Placement.NONE) : any;
        return new Decision(chosen.stream()
                .map(tray -> new Alternative(List.of(placement(unit, tray, weigh || chosen.size() > 1)), List.of()))
                .toList());
    }

    private boolean reaches(int tray, Unit unit) {
        return unit.cups().stream()
                .anyMatch(cup -> trays.get(tray).reaches(seats.get(cup).ruled()));
    }

    /** The trays that fit, nearest in thickness first. */
    private List<Integer> options(@Nullable BigDecimal thickness) {
        Thickness asked = new Thickness(thickness);
        return known.computeIfAbsent(asked, any -> fitting(asked));
    }

    private List<Integer> fitting(Thickness asked) {
        return IntStream.range(0, trays.size())
                .boxed()
                .filter(tray -> asked.fits(goods, trays.get(tray)))
                .sorted(Comparator.comparing(tray -> asked.from(trays.get(tray))))
                .toList();
    }

    private Placement placement(Unit unit, int tray, boolean weigh) {
        return new Placement(unit.cups(), tray, weigh ? alone(unit, tray) : Score.NOTHING);
    }

    private Score alone(Unit unit, int tray) {
        List<Seat> mine = unit.cups().stream().map(seats::get).toList();
        return tray == Placement.NONE
                ? new Score(mine.size(), 0, 0)
                : Sweep.fill(mine, trays.get(tray).stock()).score();
    }
}
