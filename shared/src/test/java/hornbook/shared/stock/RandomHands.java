package hornbook.shared.stock;

import hornbook.shared.exchange.SmallShop;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.shop.Movement;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Whatever hands do to stock, in any order and with undo between, the ledger's sums stay equal to the counts. The long
 * form is this program: {@code RandomHands 10000 1}, how many and which draw.
 */
final class RandomHands {
    private static final List<String> PLACES = List.of("d-spool-r6c4", "d-card-r1c2", "pl-rack");

    private final Random random;
    private final Books books;
    private final StockBook stock;
    private final BagBook bags;
    private final List<String> retired = new ArrayList<>(List.of("lot-0008"));

    private RandomHands(Books books, long draw) {
        this.random = new Random(draw);
        this.books = books;
        this.stock = new StockBook(books);
        this.bags = new BagBook(books);
    }

    /** Deeds done and refused, and what did not agree after one of them. */
    record Outcome(int done, int refused, List<String> wrong) {}

    static Outcome run(Books books, int n, long draw, int lookEvery) {
        RandomHands hands = new RandomHands(books, draw);
        int refused = 0;
        List<String> wrong = new ArrayList<>();
        for (int i = 1; i <= n; i++) {
            try {
                hands.next().get();
            } catch (BadInput no) {
                refused++;
                if (!String.valueOf(no.getMessage()).contains(":")) {
                    wrong.add("a refusal that does not say what to do: " + no.getMessage());
                }
            }
            if (i % lookEvery == 0 || i == n) {
                int at = i;
                books.wrongBalances().forEach(lot -> wrong.add("after " + at + ": " + lot));
            }
        }
        wrong.addAll(hands.unlikeTheLedger());
        return new Outcome(n - refused, refused, wrong);
    }

    /** Added up here once more, line by line, and not by the books' own sums. */
    private List<String> unlikeTheLedger() {
        Map<String, Integer> sums = books.all(Movement.class).stream()
                .collect(Collectors.groupingBy(Movement::lot, Collectors.summingInt(Movement::qty)));
        return books.all(Lot.class).stream()
                .filter(lot -> lot.count() instanceof Count.Exact(int there)
                        && (there < 0 || there != sums.getOrDefault(lot.id(), 0)))
                .map(lot -> lot.id() + " is " + lot.count().written() + ", its ledger " + sums.get(lot.id()))
                .toList();
    }

    private Supplier<Deed> next() {
        List<String> lots = books.all(Lot.class).stream().map(Lot::id).toList();
        String lot = lots.get(random.nextInt(lots.size()));
        String other = lots.get(random.nextInt(lots.size()));
        String place = PLACES.get(random.nextInt(PLACES.size()));
        int n = random.nextInt(6) - 1;
        Piece piece = new Piece("screw " + n, "part-screw-unknown", "", null, "", LotState.SALVAGED);
        return switch (random.nextInt(17)) {
            case 0 -> () -> stock.count(lot, new Count.Exact(n));
            case 1 -> () -> stock.count(lot, Count.Rough.SOME);
            case 2 -> () -> stock.use(new Taking(lot, n, null, "", true));
            case 3 -> () -> stock.receive(lot, new Receipt(n, null, null, null, null, ""));
            case 4 -> () -> stock.salvage(lot, n, "a parts horn");
            case 5 -> () -> stock.split(lot, n, place);
            case 6 -> () -> stock.join(lot, other);
            case 7 -> () -> stock.add(piece, place, random.nextBoolean() ? new Count.Exact(n) : Count.Rough.FEW);
            case 8 -> () -> bags.sortOut(lot, n, piece, place);
            case 9 -> () -> bags.sortOutInto(lot, n, other);
            case 10 -> () -> retire(lot);
            case 11 -> () -> stock.bringBack(retired.get(random.nextInt(retired.size())));
            case 12 -> () -> stock.move(lot, place);
            case 13 -> () -> stock.keepsake(lot, random.nextBoolean());
            case 14 -> () -> stock.setAside(lot, random.nextBoolean());
            default -> this::takeBack;
        };
    }

    private Deed retire(String lot) {
        retired.add(lot);
        return stock.retire(lot);
    }

    /** Now and then one of long ago; mostly of late, which later deeds have not yet touched. */
    private Deed takeBack() {
        long last = books.deeds(1).getFirst().number();
        int reach = random.nextInt(10) == 0 ? (int) last : 20;
        return books.undo(Math.max(1, last - random.nextInt(reach)));
    }

    public static void main(String[] given) throws Exception {
        int n = given.length > 0 ? Integer.parseInt(given[0]) : 10_000;
        long draw = given.length > 1 ? Long.parseLong(given[1]) : 1;
        try (Books books = SmallShop.open(Files.createTempDirectory("hands").resolve("shop"))) {
            System.out.println(run(books, n, draw, 100));
        }
    }
}
