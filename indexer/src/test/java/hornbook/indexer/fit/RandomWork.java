package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Direction;
import hornbook.catalogue.entry.Fitting;
import hornbook.catalogue.entry.Operation;
import hornbook.catalogue.entry.PieceEnd;
import hornbook.catalogue.entry.Working;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * A random kind of part with up to ten operations on two sizes and two words, a piece and what is wanted of it. All
 * figures are hundredths of a millimetre, so that ends meet exactly.
 */
final class RandomWork {
    private static final Catalogue SHIPPED = Catalogue.shipped();
    static final String KIND = "part-trial";

    final List<Tool> tools = new ArrayList<>();
    final Map<String, Value> has = new LinkedHashMap<>();
    final Map<String, Want> wants = new LinkedHashMap<>();
    private final Random random;

    /**
     * One operation, in figures that an exhaustive search reads for itself.
     *
     * @param dimension a or b, sizes; s or t, words
     * @param way -1 smaller, 1 larger, 0 sets a word to {@code word}
     * @param by minutes for each started {@code step} of the amount, or 0: then {@code each} once
     * @param bound on the other size, for operations that set a word: it may be no more than that; 0 for none
     * @param takesEnd takes the word s away
     */
    record Tool(
            String id,
            String dimension,
            int way,
            double accuracy,
            double max,
            int order,
            double setUp,
            double each,
            double step,
            double least,
            double bound,
            @Nullable String word,
            boolean takesEnd) {}

    RandomWork(long seed) {
        random = new Random(seed);
        int count = 3 + random.nextInt(8);
        for (int i = 0; i < count; i++) {
            tools.add(random.nextInt(3) > 0 ? sizing(i) : wording(i));
        }
        has.put("a", Value.of(hundredths(200, 600)));
        has.put("b", Value.of(hundredths(200, 600)));
        has.put("s", new Value.Word(random.nextBoolean() ? "yes" : "no"));
        has.put("t", new Value.Word("raw"));
        want("a", 0.7);
        want("b", 0.5);
        if (random.nextInt(3) > 0) {
            wants.put("t", new Want.Among(List.of("done")));
        }
        if (random.nextInt(3) == 0) {
            wants.put("s", new Want.Among(List.of("yes")));
        }
    }

    private void want(String size, double chance) {
        if (random.nextDouble() < chance) {
            double now = ((Value.Amount) has.get(size)).mm();
            double low = Math.max(1, round(now - 1.5 + hundredths(0, 200)));
            wants.put(size, new Want.Between(low, round(low + hundredths(0, 40))));
        }
    }

    private Tool sizing(int i) {
        boolean smaller = random.nextInt(4) > 0;
        boolean byAmount = random.nextBoolean();
        return new Tool(
                "op-t" + i,
                random.nextBoolean() ? "a" : "b",
                smaller ? -1 : 1,
                hundredths(0, 15),
                random.nextInt(3) == 0 ? 1000 : hundredths(5, 200),
                random.nextInt(6),
                random.nextInt(8) / 2.0,
                1 + random.nextInt(6) / 2.0,
                byAmount ? hundredths(5, 60) : 0,
                random.nextBoolean() ? hundredths(50, 300) : 0,
                0,
                null,
                random.nextInt(4) == 0);
    }

    private Tool wording(int i) {
        boolean t = random.nextInt(3) > 0;
        return new Tool(
                "op-t" + i,
                t ? "t" : "s",
                0,
                0,
                0,
                3 + random.nextInt(6),
                random.nextInt(8) / 2.0,
                1 + random.nextInt(6) / 2.0,
                0,
                0,
                t && random.nextBoolean() ? hundredths(150, 500) : 0,
                t ? "done" : "yes",
                false);
    }

    private double hundredths(int from, int to) {
        return round((from + random.nextInt(to - from + 1)) / 100.0);
    }

    static double round(double value) {
        return Math.round(value * 1e6) / 1e6;
    }

    Craft craft() {
        List<Operation> operations = tools.stream().map(RandomWork::operation).toList();
        return new Crafts(SHIPPED.with(operations), KIND, fitting()).of(KIND);
    }

    private static Operation operation(Tool tool) {
        String check = tool.word() == null
                ? "amt <= " + tool.max() + " and to >= " + tool.least()
                : tool.bound() > 0 ? "a <= " + tool.bound() : "n >= 1";
        Working working = new Working(
                tool.order(),
                null,
                List.of(),
                tool.word() == null ? List.of() : List.of(tool.word()),
                null,
                null,
                null,
                tool.takesEnd() ? true : null,
                Map.of(),
                Map.of(),
                null,
                null,
                null,
                null,
                Map.of(),
                null);
        return new Operation(
                tool.id(),
                tool.id(),
                List.of(KIND),
                tool.dimension(),
                tool.way() < 0 ? Direction.SMALLER : tool.way() > 0 ? Direction.LARGER : Direction.SETS,
                tool.word() == null && tool.order() % 2 == 0 ? tool.max() : null,
                null,
                tool.accuracy(),
                null,
                null,
                check,
                tool.setUp(),
                tool.each(),
                "time",
                tool.step() > 0 ? "ceil(amt/" + tool.step() + ")" : "n",
                List.of(),
                null,
                false,
                null,
                working,
                "made up",
                "made up");
    }

    private static Fitting fitting() {
        return new Fitting(
                null,
                null,
                null,
                Map.of(),
                Map.of("a", "a", "b", "b", "s", "s", "t", "t"),
                List.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                List.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of("end", new PieceEnd(Map.of("s", "no"))),
                Map.of(),
                null,
                null,
                null);
    }
}
