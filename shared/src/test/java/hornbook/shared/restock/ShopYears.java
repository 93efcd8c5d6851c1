package hornbook.shared.restock;

import hornbook.shared.supply.Deliveries;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Years of a shop played through: seeded demand of the four classes of Syntetos, Boylan and Croston 2005 (how often, how
 * even), late suppliers, packs, a look at the list once a week, what is short waits.
 */
final class ShopYears {
    static final int KNOWN_MONTHS = 24;
    private static final int YEARS = 5;
    private static final int MONTH = 30;
    private static final int DAYS = (KNOWN_MONTHS + 12 * YEARS) * MONTH;

    /** Hits a month from and to, mean size of a hit from and to, how uneven sizes are: 0 all alike, 1 geometric. */
    enum Demand {
        SMOOTH(3, 8, 1, 1.5, 0),
        ERRATIC(1.5, 4, 3, 6, 1),
        INTERMITTENT(0.15, 0.6, 1, 2, 0),
        LUMPY(0.15, 0.6, 3, 6, 1);

        final double[] of;

        Demand(double... of) {
            this.of = of;
        }
    }

    /** One article: demand by day, days of each delivery in turn, pieces in a pack. */
    record Item(Demand demand, int[] daily, int[] leads, int pack) {}

    /** What a rule achieved: cycles from order to arrival, those without a shortage, mean stock. */
    record Outcome(int cycles, int good, double stock) {
        double service() {
            return cycles == 0 ? 1 : (double) good / cycles;
        }

        Outcome plus(Outcome other) {
            return new Outcome(cycles + other.cycles, good + other.good, stock + other.stock);
        }
    }

    /** Says how many to order, given the day and what is free and on order. */
    interface Rule {
        int order(Item item, int day, int position, int delivered);
    }

    static List<Item> items(int wanted, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < wanted; i++) {
            items.add(item(Demand.values()[i % 4], random));
        }
        return items;
    }

    private static Item item(Demand demand, SplittableRandom random) {
        double hits = random.nextDouble(demand.of[0], demand.of[1]) / MONTH;
        double mean = random.nextDouble(demand.of[2], demand.of[3]);
        int[] daily = new int[DAYS];
        for (int day = 0; day < DAYS; day++) {
            daily[day] = random.nextDouble() < hits ? size(mean, demand.of[4] > 0, random) : 0;
        }
        int typical = new int[] {3, 9, 14, 21}[random.nextInt(4)];
        int[] leads = new int[400];
        for (int i = 0; i < leads.length; i++) {
            leads[i] = Math.max(1, (int) Math.round(typical * Math.exp(0.35 * random.nextGaussian())));
        }
        return new Item(demand, daily, leads, new int[] {1, 1, 5, 10}[random.nextInt(4)]);
    }

    private static int size(double mean, boolean uneven, SplittableRandom random) {
        if (!uneven) {
            return (int) mean + (random.nextDouble() < mean - (int) mean ? 1 : 0);
        }
        int size = 1;
        while (random.nextDouble() < 1 - 1 / mean) {
            size++;
        }
        return size;
    }

    private record Order(int placed, int arrives, int pieces) {}

    static Outcome play(Item item, Rule rule) {
        int first = KNOWN_MONTHS * MONTH;
        int onHand = 0;
        int delivered = 12;
        int good = 0;
        int cycles = 0;
        long stock = 0;
        int lastShort = -1;
        List<Order> open = new ArrayList<>();
        onHand = Math.max(0, rule.order(item, first, 0, delivered));
        for (int day = first; day < DAYS; day++) {
            for (Order order : List.copyOf(open)) {
                if (order.arrives() == day) {
                    onHand += order.pieces();
                    open.remove(order);
                    cycles++;
                    good += lastShort < order.placed() ? 1 : 0;
                }
            }
            onHand -= item.daily()[day];
            lastShort = onHand < 0 ? day : lastShort;
            stock += Math.max(0, onHand);
            if (day % 7 == 0) {
                int position = onHand + open.stream().mapToInt(Order::pieces).sum();
                int pieces = rule.order(item, day, position, delivered);
                if (pieces > 0) {
                    open.add(new Order(day, day + item.leads()[delivered % item.leads().length], pieces));
                    delivered++;
                }
            }
        }
        return new Outcome(cycles, good, (double) stock / (DAYS - first));
    }

    /** The rule of the shop: forecast and point anew each month. */
    static Rule ours(double level) {
        return ours(level, true);
    }

    /** @param excess may the point allow for takings of several? Without, for a control */
    static Rule ours(double level, boolean excess) {
        return ours(level, excess, Keeping.USUAL, Optional.empty());
    }

    /** @param price of a piece, where what costs least to order and to keep decides how much is bought */
    static Rule ours(double level, boolean excess, Keeping keeping, Optional<BigDecimal> price) {
        return new Rule() {
            private int month = -1;
            private Forecast forecast = new Forecast(0, 0, Takings.NONE, "");
            private int point;

            @Override
            public int order(Item item, int day, int position, int delivered) {
                if (day / MONTH != month) {
                    month = day / MONTH;
                    Use use = use(item, month);
                    Forecast own = Forecast.of(use, new KindUse(List.of(use)));
                    forecast = excess ? own : new Forecast(own.perMonth(), own.variance(), Takings.NONE, "");
                    List<Integer> leads =
                            Arrays.stream(item.leads(), 0, delivered).boxed().toList();
                    point = ReorderPoint.of(forecast, Wait.of(new Deliveries(leads), keeping.reviewDays()), level);
                }
                return Need.of(position, 0, point, OrderSize.of(forecast, keeping, price), item.pack(), true)
                        .order();
            }
        };
    }

    private static Use use(Item item, int months) {
        int[] pieces = new int[months];
        Takings takings = Takings.NONE;
        for (int day = 0; day < months * MONTH; day++) {
            pieces[day / MONTH] += item.daily()[day];
            takings = item.daily()[day] > 0 ? takings.and(item.daily()[day]) : takings;
        }
        return new Use(pieces, takings, LocalDate.EPOCH);
    }

    /**
     * Two bins: when the first is empty, it is ordered anew; the second, {@code cover} times the mean demand over the wait,
     * has to last.
     *
     * @param refill does an order fill a bin again? If not it is as much as the shop's rule buys at a time
     */
    static Rule twoBins(double cover, boolean refill) {
        return (item, day, position, delivered) -> {
            double perDay = use(item, day / MONTH).mean() / MONTH;
            double wait = Arrays.stream(item.leads(), 0, delivered).average().orElseThrow() + 7;
            int bin = Math.max(1, (int) Math.ceil(cover * perDay * wait));
            int full = bin + (refill ? bin : Math.max(item.pack(), (int) Math.ceil(3 * MONTH * perDay)));
            int packs = (full - position) / item.pack();
            return position <= bin ? Math.max(1, packs) * item.pack() : 0;
        };
    }
}
