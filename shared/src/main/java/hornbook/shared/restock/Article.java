package hornbook.shared.restock;

import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.supply.Verdicts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is bought and used as one: lots that differ only in where they lie. */
record Article(List<Lot> lots) {
    private record Alike(String item, String title, String dimensions, String thread, String material, String colour) {
        static Alike of(Lot lot) {
            String thread = lot.thread() == null ? "" : lot.thread();
            return new Alike(lot.item(), lot.title(), lot.dimensions(), thread, lot.material(), lot.colour());
        }
    }

    /** Keepsakes are no stock; a reserve is, but not to be counted. */
    static List<Article> of(List<Lot> lots) {
        Map<Alike, List<Lot>> alike = new LinkedHashMap<>();
        lots.stream()
                .filter(lot -> !lot.keepsake())
                .forEach(lot -> alike.computeIfAbsent(Alike.of(lot), a -> new ArrayList<>())
                        .add(lot));
        return alike.values().stream().map(Article::new).toList();
    }

    /** What it is known by among all articles. */
    String key() {
        return lots.getFirst().id();
    }

    /** The lot that stands for it on a list: the one bought for, else the first. */
    Lot lot() {
        return lots.stream()
                .filter(lot -> !lot.reserve() && lot.supplier() != null)
                .findFirst()
                .orElse(lots.stream().filter(lot -> !lot.reserve()).findFirst().orElse(lots.getFirst()));
    }

    boolean onlyReserve() {
        return lots.stream().allMatch(Lot::reserve);
    }

    boolean salvaged() {
        return lots.stream().allMatch(lot -> lot.state() == LotState.SALVAGED);
    }

    /** Pieces that count: not in reserve, not of a quality to avoid; of a count by eye the least the word means. */
    int onHand(Verdicts verdicts) {
        return lots.stream()
                .filter(lot -> !lot.reserve() && !verdicts.avoided(lot))
                .mapToInt(lot -> least(lot.count()))
                .sum();
    }

    /** Pieces in reserve or to be avoided. */
    int uncounted(Verdicts verdicts) {
        return lots.stream()
                .filter(lot -> lot.reserve() || verdicts.avoided(lot))
                .mapToInt(lot -> least(lot.count()))
                .sum();
    }

    static int least(Count count) {
        return switch (count) {
            case Count.Exact(int pieces) -> pieces;
            case Count.Rough rough ->
                switch (rough) {
                    case FEW -> 1;
                    case SOME -> 6;
                    case PLENTY -> 21;
                };
        };
    }

    /** The word of a count by eye, where one of its lots has one. */
    Optional<String> byEye() {
        return lots.stream()
                .filter(lot -> !lot.reserve() && lot.count() instanceof Count.Rough)
                .map(lot -> lot.count().written())
                .findFirst();
    }

    /** What was paid for a piece of it when it was last bought. */
    Optional<BigDecimal> lastPrice(Ledger ledger) {
        return lots.stream()
                .flatMap(lot -> ledger.lot(lot.id()).stream())
                .filter(line -> line.lastPrice().isPresent())
                .max(Comparator.comparing(line -> line.lastBought().orElse(LocalDate.MIN)))
                .flatMap(LotLedger::lastPrice);
    }

    /** Its uses by months that end today; the oldest month takes what an even number of months leaves over. */
    Use use(Ledger ledger, LocalDate today) {
        List<LotLedger> lines =
                lots.stream().flatMap(lot -> ledger.lot(lot.id()).stream()).toList();
        LocalDate first = Ledger.earliest(lines, today);
        int months = Math.max(1, (int) Period.between(first, today.plusDays(1)).toTotalMonths());
        int[] pieces = new int[months];
        LocalDate last = null;
        Takings takings = Takings.NONE;
        for (LotLedger line : lines) {
            for (LotLedger.Taken taken : line.taken()) {
                if (taken.day().isAfter(today)) {
                    continue;
                }
                int ago = (int) Period.between(taken.day(), today).toTotalMonths();
                pieces[Math.max(0, months - 1 - ago)] += taken.pieces();
                takings = takings.and(taken.pieces());
                last = last == null || taken.day().isAfter(last) ? taken.day() : last;
            }
        }
        return new Use(pieces, takings, last);
    }
}
