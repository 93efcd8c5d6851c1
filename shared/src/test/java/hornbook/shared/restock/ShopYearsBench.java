package hornbook.shared.restock;

import hornbook.shared.restock.ShopYears.Demand;
import hornbook.shared.restock.ShopYears.Item;
import hornbook.shared.restock.ShopYears.Outcome;
import hornbook.shared.restock.ShopYears.Rule;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Service achieved and stock held over five years, against two bins of equal service. Arguments: items, seed, level, and for an
 * order size by cost that of an order and the price of a piece.
 */
public final class ShopYearsBench {
    private ShopYearsBench() {}

    public static void main(String[] args) {
        int items = args.length > 0 ? Integer.parseInt(args[0]) : 500;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 11;
        double level = args.length > 2 ? Double.parseDouble(args[2]) : 0.95;
        Supplier<Rule> rule = () -> ShopYears.ours(level);
        if (args.length > 4) {
            Keeping keeping = new Keeping(level, 7, Double.valueOf(args[3]), Keeping.USUAL.holdingShare());
            Optional<BigDecimal> price = Optional.of(new BigDecimal(args[4]));
            rule = () -> ShopYears.ours(level, true, keeping, price);
        }
        List<Item> shop = ShopYears.items(items, seed);
        System.out.printf(Locale.ROOT, "%d items, 5 years, seed %d, level %.2f%n", items, seed, level);
        for (Demand demand : Demand.values()) {
            print(demand.name(), shop.stream().filter(i -> i.demand() == demand).toList(), rule);
        }
        print("ALL", shop, rule);
    }

    private static void print(String name, List<Item> items, Supplier<Rule> rule) {
        Outcome ours = play(items, rule);
        System.out.printf(
                Locale.ROOT,
                "  %-12s %.3f of %d cycles without a shortage, mean stock %.2f%n",
                name,
                ours.service(),
                ours.cycles(),
                ours.stock() / items.size());
        bins(items, ours, false);
        bins(items, ours, true);
    }

    private static void bins(List<Item> items, Outcome ours, boolean refill) {
        double cover = coverOf(items, ours.service(), refill);
        Outcome bins = play(items, () -> ShopYears.twoBins(cover, refill));
        System.out.printf(
                Locale.ROOT,
                "      two bins %s: %.2f waits a bin, %.3f of %d, stock %.2f; ours %.2f of it%n",
                refill ? "refilled" : "of our order size",
                cover,
                bins.service(),
                bins.cycles(),
                bins.stock() / items.size(),
                ours.stock() / bins.stock());
    }

    static Outcome play(List<Item> items, Supplier<Rule> rule) {
        Outcome sum = new Outcome(0, 0, 0);
        for (Item item : items) {
            sum = sum.plus(ShopYears.play(item, rule.get()));
        }
        return sum;
    }

    /** How many mean waits a bin must cover to serve as well. */
    static double coverOf(List<Item> items, double service, boolean refill) {
        double low = 0.2;
        double high = 12;
        for (int i = 0; i < 14; i++) {
            double middle = (low + high) / 2;
            if (play(items, () -> ShopYears.twoBins(middle, refill)).service() < service) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
