package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Fit over many lots of rods, against one pass over all lots and one over the ledger, in turn in one run. {@code --lots
 * 20000 --rounds 7}.
 */
final class FitBench {
    private static final String[] THREADS = {"2-56 UNC", "3-48 UNC", "M2.5x0.45", "M3x0.5", "4-40 UNC"};

    public static void main(String[] args) throws Exception {
        int lots = args.length > 1 ? Integer.parseInt(args[1]) : 20_000;
        int rounds = args.length > 3 ? Integer.parseInt(args[3]) : 7;
        Path folder = Files.createTempDirectory("fit-bench");
        try (Books books = Books.open(folder, Access.WRITE)) {
            fill(books, lots, new Random(7));
            Fit fit = new Fit(books, Catalogue.shipped(), StandardSizes.load().reader());
            FitQuestion question = FitQuestion.of("part-hinge-rod", "diameter=2.38", "length=118", "thread=2-56");
            List<Double> asked = new ArrayList<>();
            List<Double> pass = new ArrayList<>();
            List<Double> ledger = new ArrayList<>();
            int plans = 0;
            for (int round = 0; round < rounds + 2; round++) {
                double a = seconds(() -> fit.answer(question));
                double b = seconds(() -> books.all(Lot.class));
                double c = seconds(() -> books.all(Movement.class));
                if (round > 1) {
                    asked.add(a / b);
                    pass.add(a / c);
                    ledger.add(a);
                }
            }
            plans = fit.answer(question).plans().size();
            System.out.printf(
                    Locale.ROOT,
                    "%d lots, %d plans%nfit / reading all lots:   %s%nfit / reading the ledger: %s%nfit, seconds:     "
                            + "       %s%n",
                    lots,
                    plans,
                    spread(asked),
                    spread(pass),
                    spread(ledger));
        }
    }

    private static void fill(Books books, int lots, Random random) {
        books.write("many rods", w -> {
            w.put(new Cabinet("c-x", "x", 1, 1, "", ""));
            w.put(new Drawer("d-x", "c-x", 1, 1, "x", "", "", LabelState.RIGHT, null, ""));
            for (int i = 0; i < lots; i++) {
                w.put(lot(i, random));
                w.put(new Movement(
                        "v-" + i,
                        LocalDate.of(2026, 1, 1),
                        "lot-" + i,
                        MovementKind.OPENING,
                        3,
                        null,
                        null,
                        null,
                        null,
                        null,
                        ""));
            }
        });
    }

    private static Lot lot(int i, Random random) {
        boolean bar = random.nextInt(10) == 0;
        String size = String.format(
                Locale.ROOT,
                "diameter=%.2f mm;length=%.1f mm",
                2.0 + random.nextInt(120) / 100.0,
                bar ? 330.0 : 25 + random.nextInt(1500) / 10.0);
        return new Lot(
                "lot-" + i,
                "d-x",
                null,
                bar ? "sup-rod-steel" : "part-hinge-rod",
                "rod " + i,
                List.of(),
                List.of(),
                size,
                bar ? null : THREADS[random.nextInt(THREADS.length)],
                "steel",
                "",
                bar ? LotState.BLANK : LotState.SALVAGED,
                Count.ZERO,
                false,
                false,
                null,
                null,
                "");
    }

    private static double seconds(Runnable work) {
        long begin = System.nanoTime();
        work.run();
        return (System.nanoTime() - begin) / 1e9;
    }

    private static String spread(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        return String.format(
                Locale.ROOT,
                "min %.2f, median %.2f, max %.2f",
                sorted.getFirst(),
                sorted.get(sorted.size() / 2),
                sorted.getLast());
    }
}
