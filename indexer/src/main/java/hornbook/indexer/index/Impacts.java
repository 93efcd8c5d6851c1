package hornbook.indexer.index;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ObjIntConsumer;

/** Adds up what each term weighs on a card, and brings the sums to whole numbers that the index can keep. */
final class Impacts {
    /** The largest impact; the search divides by it. */
    static final int MOST = 100;
    /** Where half the most is reached (BM25's saturation). */
    private static final float HALF = 1.2f;

    private final Map<String, float[]> weights = new HashMap<>();

    void add(String term, float weight) {
        float[] sum = weights.get(term);
        if (sum == null) {
            weights.put(term, new float[] {weight});
        } else {
            sum[0] += weight;
        }
    }

    void atLeast(String term, float weight) {
        float[] sum = weights.computeIfAbsent(term, t -> new float[1]);
        sum[0] = Math.max(sum[0], weight);
    }

    int size() {
        return weights.size();
    }

    /** Every term with its impact. */
    void each(float standing, ObjIntConsumer<String> to) {
        weights.forEach((term, sum) -> to.accept(term, impact(sum[0], standing)));
    }

    private static int impact(float weight, float standing) {
        return Math.clamp(Math.round(MOST * standing * weight / (weight + HALF)), 1, MOST);
    }
}
