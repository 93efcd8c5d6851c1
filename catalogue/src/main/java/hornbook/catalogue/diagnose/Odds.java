package hornbook.catalogue.diagnose;

import java.util.LinkedHashMap;
import java.util.Map;

/** How answers move the odds, one cause being present. Rates of error are from memory; nothing is ever quite certain. */
final class Odds {
    /** A cause that is there and that its check does not show. */
    private static final double MISSED = 0.05;
    /** A check that says yes to another cause. */
    private static final double MISLED = 0.02;

    private Odds() {}

    /**
     * Chances after the answers.
     *
     * @param prior by cause; what is missing to 1 is something else
     * @param answers by cause
     */
    static Map<String, Double> after(Map<String, Double> prior, Map<String, Boolean> answers) {
        double rest = 1 - prior.values().stream().mapToDouble(p -> p).sum();
        double total = rest * likelihood("", answers);
        Map<String, Double> after = new LinkedHashMap<>();
        for (Map.Entry<String, Double> cause : prior.entrySet()) {
            double joint = cause.getValue() * likelihood(cause.getKey(), answers);
            after.put(cause.getKey(), joint);
            total += joint;
        }
        double all = total;
        after.replaceAll((cause, joint) -> joint / all);
        return after;
    }

    private static double likelihood(String present, Map<String, Boolean> answers) {
        double likelihood = 1;
        for (Map.Entry<String, Boolean> answer : answers.entrySet()) {
            double yes = answer.getKey().equals(present) ? 1 - MISSED : MISLED;
            likelihood *= answer.getValue() ? yes : 1 - yes;
        }
        return likelihood;
    }
}
