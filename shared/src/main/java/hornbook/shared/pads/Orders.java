package hornbook.shared.pads;

import hornbook.shared.shop.Job;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Books;
import hornbook.shared.supply.Deliveries;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Turns a cup without a pad into a line to order: what, from whom, and whether it comes in time. */
final class Orders {
    private final Books books;
    private final Map<String, Optional<Integer>> days = new HashMap<>();

    Orders(Books books) {
        this.books = books;
    }

    Shortage line(Goods goods, Cup cup, int ruled, Tray tray) {
        Optional<Lot> lot = tray.lot(ruled);
        Optional<Supplier> supplier = lot.or(() -> tray.lot(ruled - 1))
                .or(() -> tray.lot(ruled + 1))
                .map(Lot::supplier)
                .flatMap(id -> books.find(Supplier.class, id));
        Optional<Integer> typical = supplier.flatMap(this::typical);
        LocalDate promised = promised(cup);
        String why = "no %s within half a millimetre of %s is left%s; %s"
                .formatted(
                        goods.word,
                        HalfSize.text(ruled),
                        reserve(tray, ruled),
                        supplier.map(s -> arrival(s, typical, promised))
                                .orElse("no supplier is known for it: name one with the lot"));
        return new Shortage(
                cup.job(),
                cup.cup(),
                HalfSize.mm(ruled),
                lot.map(Lot::title).orElse(tray.batch.named(goods.word) + ", " + HalfSize.text(ruled)),
                lot.map(Lot::id).orElse(null),
                supplier.map(Supplier::id).orElse(null),
                typical.orElse(null),
                promised,
                why);
    }

    Shortage noTray(Goods goods, Cup cup, int ruled) {
        String thickness = cup.thickness() == null ? "" : ", " + cup.thickness().toPlainString() + " mm thick";
        return new Shortage(
                cup.job(),
                cup.cup(),
                HalfSize.mm(ruled),
                goods.word + ", " + HalfSize.text(ruled) + thickness,
                null,
                null,
                null,
                promised(cup),
                "the shop keeps no " + goods.word + thickness + " to take from: order by the measured list");
    }

    private static String reserve(Tray tray, int ruled) {
        return tray.reserve(ruled)
                .or(() -> tray.reserve(ruled - 1))
                .or(() -> tray.reserve(ruled + 1))
                .map(lot -> " but in reserve (" + lot.id() + ")")
                .orElse("");
    }

    private String arrival(Supplier supplier, Optional<Integer> typical, @Nullable LocalDate promised) {
        if (typical.isEmpty()) {
            return supplier.name() + " has no delivery on record: ask how long it takes";
        }
        LocalDate day = books.today().plusDays(typical.get());
        String about = "%s takes %d days or so, %s if ordered today".formatted(supplier.name(), typical.get(), day);
        if (promised == null) {
            return about;
        }
        return about
                + (day.isAfter(promised) ? ", after the " : ", before the ")
                + promised
                + " promised: ask before you promise";
    }

    private Optional<Integer> typical(Supplier supplier) {
        return days.computeIfAbsent(
                supplier.id(),
                id -> Deliveries.of(supplier, books.where(Movement.class, "supplier", id))
                        .typical());
    }

    private @Nullable LocalDate promised(Cup cup) {
        return cup.job() == null
                ? null
                : books.find(Job.class, cup.job()).map(Job::promised).orElse(null);
    }
}
