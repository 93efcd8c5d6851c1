package hornbook.shared.pads;

import hornbook.shared.measure.PadSize;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/** One kind of goods put into all cups at once: who gets what, who goes without, what it strands. */
final class Plan {
    private final Goods goods;
    private final List<Cup> cups;
    private final List<Seat> seats;
    private final List<Tray> trays;
    private final Choice.Result result;
    private final List<String> unfit;
    private final Map<Integer, Lot> lots = new TreeMap<>();
    private final Map<Integer, int[]> left = new HashMap<>();

    private Plan(
            Goods goods, List<Cup> cups, List<Seat> seats, List<Tray> trays, Choice.Result result, List<String> unfit) {
        this.goods = goods;
        this.cups = cups;
        this.seats = seats;
        this.trays = trays;
        this.result = result;
        this.unfit = unfit;
        hand();
    }

    static Plan of(Goods goods, List<Cup> all, PadSize.Tie tie, List<Tray> trays) {
        List<Cup> cups = new ArrayList<>();
        List<Seat> seats = new ArrayList<>();
        List<String> unfit = new ArrayList<>();
        for (Cup cup : all) {
            BigDecimal mm = goods.measure(cup).orElse(null);
            Integer ruled = mm == null ? null : HalfSize.ruled(mm, tie).orElse(null);
            if (mm != null && ruled != null) {
                cups.add(cup);
                seats.add(new Seat(ruled, HalfSize.off(mm, ruled)));
            } else if (mm != null) {
                unfit.add("%s: no %s is made for %s mm: measure again".formatted(cup.named(), goods.word, mm));
            }
        }
        return new Plan(
                goods,
                cups,
                seats,
                trays,
                Choice.best(seats, trays, new Horns(goods, cups, seats, trays).decisions()),
                unfit);
    }

    /** Hands out lots, counted ones first, as long as each lasts. */
    private void hand() {
        Map<String, Integer> taken = new HashMap<>();
        for (int cup = 0; cup < cups.size(); cup++) {
            int size = result.sizes()[cup];
            if (size == 0) {
                continue;
            }
            int tray = result.trays()[cup];
            left.computeIfAbsent(tray, t -> trays.get(t).stock().clone())[size]--;
            Lot lot = trays.get(tray).toTake(size).stream()
                    .filter(l -> taken.getOrDefault(l.id(), 0) < Tray.surely(l.count()))
                    .findFirst()
                    .orElseThrow();
            taken.merge(lot.id(), 1, Integer::sum);
            lots.put(cup, lot);
        }
    }

    List<Assignment> assignments(Predicate<Cup> asked) {
        List<Assignment> list = new ArrayList<>();
        lots.forEach((cup, lot) -> {
            if (asked.test(cups.get(cup))) {
                list.add(assignment(cup, lot));
            }
        });
        return list;
    }

    private Assignment assignment(int cup, Lot lot) {
        int ruled = seats.get(cup).ruled();
        int size = result.sizes()[cup];
        return new Assignment(
                cups.get(cup).job(),
                cups.get(cup).cup(),
                goods.measure(cups.get(cup)).orElseThrow(),
                HalfSize.mm(ruled),
                HalfSize.mm(size),
                size - ruled,
                lot.id(),
                lot.title(),
                lot.lies(),
                trays.get(result.trays()[cup]).batch.thickness());
    }

    List<Shortage> shortages(Predicate<Cup> asked, Orders orders) {
        List<Shortage> list = new ArrayList<>();
        for (int cup = 0; cup < cups.size(); cup++) {
            if (result.sizes()[cup] == 0 && asked.test(cups.get(cup))) {
                int tray = result.trays()[cup];
                int ruled = seats.get(cup).ruled();
                list.add(
                        tray == Placement.NONE
                                ? orders.noTray(goods, cups.get(cup), ruled)
                                : orders.line(goods, cups.get(cup), ruled, trays.get(tray)));
            }
        }
        return list;
    }

    /** Of each size whose last piece goes: what cups of it and of its neighbours can still get. */
    List<String> stranded() {
        Set<String> sentences = new LinkedHashSet<>();
        lots.forEach((cup, lot) -> {
            int[] stock = left.getOrDefault(result.trays()[cup], new int[0]);
            int size = result.sizes()[cup];
            if (stock[size] == 0) {
                sentences.add(
                        "the last of %s goes (%s): %s".formatted(HalfSize.text(size), lot.id(), then(stock, size)));
            }
        });
        return List.copyOf(sentences);
    }

    private static String then(int[] stock, int size) {
        List<String> without = new ArrayList<>();
        for (int ruled = size - 1; ruled <= size + 1; ruled++) {
            if (at(stock, ruled - 1) + at(stock, ruled) + at(stock, ruled + 1) == 0) {
                without.add(HalfSize.text(ruled));
            }
        }
        if (!without.isEmpty()) {
            return "nothing is left then for a cup of " + String.join(", ", without);
        }
        List<String> near = new ArrayList<>();
        for (int other : List.of(size - 1, size + 1)) {
            if (at(stock, other) > 0) {
                near.add(HalfSize.text(other));
            }
        }
        return "the next such cup takes " + String.join(" or ", near);
    }

    private static int at(int[] stock, int size) {
        return size < 0 || size >= stock.length ? 0 : stock[size];
    }

    List<String> remarks() {
        Set<String> remarks = new LinkedHashSet<>(unfit);
        lots.values().stream()
                .filter(lot -> lot.count() instanceof Count.Rough)
                .forEach(lot -> remarks.add(
                        lot.id() + " is counted only as " + lot.count().written() + ": look before you rely on it"));
        if (!result.proven()) {
            remarks.add("so many batches fit these cups that a cheaper way may exist: ask for fewer horns at once");
        }
        cups.stream()
                .filter(cup -> goods == Goods.PADS && spread(cup))
                .forEach(cup -> remarks.add(cup.named() + ": its old pad was " + plain(cup.thickness())
                        + " mm thick, more than 0.1 off the stack's: measure again"));
        return List.copyOf(remarks);
    }

    private boolean spread(Cup cup) {
        BigDecimal own = cup.thickness();
        int tray = result.trays()[cups.indexOf(cup)];
        BigDecimal given = tray == Placement.NONE ? null : trays.get(tray).batch.thickness();
        return own != null && given != null && own.subtract(given).abs().compareTo(new BigDecimal("0.2")) > 0;
    }

    private static String plain(@org.jspecify.annotations.Nullable BigDecimal mm) {
        return mm == null ? "" : mm.toPlainString();
    }
}
