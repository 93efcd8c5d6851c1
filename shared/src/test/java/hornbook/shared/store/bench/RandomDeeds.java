package hornbook.shared.store.bench;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.store.Books;
import hornbook.shared.store.Check;
import hornbook.shared.store.SmallShop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Thousands of deeds, undone and done again in any order, against a plain reckoning of what should stand. */
public final class RandomDeeds {
    private RandomDeeds() {}

    /** Deeds done, undone or done again, refused, and what did not agree at the end. */
    public record Outcome(int deeds, int undone, int refused, List<String> wrong) {}

    public static Outcome run(Path folder, int n, long seed) {
        Random random = new Random(seed);
        Map<Long, Integer> pieces = new HashMap<>();
        List<Long> deeds = new ArrayList<>();
        int undone = 0;
        int refused = 0;
        int stock = 0;
        List<String> wrong = new ArrayList<>();
        try (Books books = SmallShop.in(folder.resolve("random"))) {
            for (int i = 0; i < n; i++) {
                if (deeds.isEmpty() || random.nextInt(3) > 0) {
                    int qty = random.nextInt(19) - 9;
                    String label = "L" + i;
                    boolean moves = random.nextBoolean();
                    long deed = books.write("deed " + i, w -> {
                                if (moves) {
                                    w.put(SmallShop.move(w.nextId(Movement.class), qty));
                                } else {
                                    w.put(SmallShop.drawer(1, label));
                                }
                            })
                            .number();
                    deeds.add(deed);
                    pieces.put(deed, moves ? qty : 0);
                    stock += moves ? qty : 0;
                } else {
                    long deed = deeds.get(deeds.size() - 1 - random.nextInt(Math.min(12, deeds.size())));
                    try {
                        long back = books.undo(deed).number();
                        undone++;
                        pieces.put(back, -pieces.get(deed));
                        stock -= pieces.get(deed);
                        deeds.add(back);
                    } catch (BadInput e) {
                        refused++;
                    }
                }
            }
            int sum = books.all(Movement.class).stream().mapToInt(Movement::qty).sum();
            String count =
                    books.find(Lot.class, SmallShop.LOT).orElseThrow().count().written();
            if (sum != stock || !count.equals(Integer.toString(stock))) {
                wrong.add("ledger " + sum + ", count " + count + ", reckoned " + stock);
            }
            books.wrongBalances().forEach(lot -> wrong.add("balance of " + lot));
            books.find(Drawer.class, "d-1").orElseThrow();
        }
        // Random deeds take more than there is; a check rightly says so.
        new Check(folder.resolve("random"))
                .run().problems().stream()
                        .filter(p -> !p.what().contains("fewer than none"))
                        .forEach(p -> wrong.add(p.line()));
        return new Outcome(deeds.size(), undone, refused, wrong);
    }

    public static void main(String[] given) throws Exception {
        Arguments arguments = Arguments.of(given);
        System.out.println("seed " + arguments.seed() + ": "
                + run(Files.createTempDirectory("random"), arguments.n(10_000), arguments.seed()));
    }
}
