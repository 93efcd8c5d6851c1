package hornbook.shared.restock;

import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** The list after one change against one pass over the ledger and against the list from nothing. Arguments: movements, lots. */
public final class RestockBench {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 30);

    private RestockBench() {}

    public static void main(String[] args) throws Exception {
        int movements = args.length > 0 ? Integer.parseInt(args[0]) : 200_000;
        int lots = args.length > 1 ? Integer.parseInt(args[1]) : movements / 20;
        Path folder = Files.createTempDirectory("shop");
        try (Books books = Books.open(folder, Access.WRITE, DAY)) {
            fill(books, movements, lots);
            Restock kept = new Restock(books);
            System.out.printf(
                    "%d movements, %d lots: first list in %.0f ms, %d lines%n",
                    movements,
                    lots,
                    millis(() -> kept.ask(RestockQuestion.BOOKS_ALONE)),
                    kept.ask(RestockQuestion.BOOKS_ALONE).lines().size());
            for (int round = 0; round < 25; round++) {
                double pass = millis(() -> pass(folder));
                String lot = "lot-%06d".formatted(3 * round);
                books.write("use", w -> w.put(use(w.nextId(Movement.class), lot)));
                double after = millis(() -> kept.ask(RestockQuestion.BOOKS_ALONE));
                if (round < 20) {
                    continue;
                }
                double fresh = millis(() -> new Restock(books).ask(RestockQuestion.BOOKS_ALONE));
                System.out.printf(
                        Locale.ROOT,
                        "  pass %.0f ms, after one change %.1f ms (1/%.0f), from nothing %.0f ms%n",
                        pass,
                        after,
                        pass / after,
                        fresh);
            }
        }
    }

    private static double millis(Runnable work) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long start = clock.getCurrentThreadCpuTime();
        work.run();
        return (clock.getCurrentThreadCpuTime() - start) / 1e6;
    }

    private static void pass(Path folder) {
        try (var sql = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("shop.db"));
                var statement = sql.createStatement();
                var row = statement.executeQuery(
                        "select lot, substr(date, 1, 7), sum(qty) from movement group by 1, 2")) {
            while (row.next()) {
                row.getInt(3);
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Movement use(String id, String lot) {
        return new Movement(id, DAY, lot, MovementKind.USE, -1, null, null, null, null, null, "");
    }

    private static void fill(Books books, int movements, int lots) {
        SplittableRandom random = new SplittableRandom(1);
        books.write("furnish", w -> {
            w.put(new Cabinet("c-oak", "Oak chest", 2, 2, "window", ""));
            w.put(new Drawer("d-1", "c-oak", 1, 1, "ALL", "N.O.", "all", LabelState.RIGHT, null, ""));
            w.put(new Supplier("sup-v-new", "Newcome Wire", "", "8 9 12 30", "", "keep", ""));
            for (int i = 0; i < lots; i++) {
                w.put(new Lot(
                        "lot-%06d".formatted(i),
                        "d-1",
                        null,
                        "item-" + i % 100,
                        "thing " + i,
                        List.of(),
                        List.of(),
                        "size=" + i + " mm",
                        null,
                        "steel",
                        "",
                        LotState.NEW,
                        Count.ZERO,
                        false,
                        false,
                        "sup-v-new",
                        10,
                        ""));
            }
            // A third of the lots are in use; each opens with more than will be taken.
            for (int i = 0; i < movements; i++) {
                int lot = i < lots ? i : random.nextInt(lots) / 3 * 3;
                LocalDate day = i < lots ? DAY.minusYears(10) : DAY.minusDays(random.nextInt(3650));
                w.put(new Movement(
                        "v-%08d".formatted(i),
                        day,
                        "lot-%06d".formatted(lot),
                        i < lots ? MovementKind.OPENING : MovementKind.USE,
                        i < lots ? 4 * movements / lots : -1,
                        null,
                        null,
                        null,
                        null,
                        null,
                        ""));
            }
        });
    }
}
