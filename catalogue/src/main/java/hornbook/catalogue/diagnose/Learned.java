package hornbook.catalogue.diagnose;

import hornbook.catalogue.entry.Provenance;
import java.util.LinkedHashMap;
import java.util.Map;

/** Shares as told, moved by what was counted: as many horns as the telling is worth are put in beside the counts. */
final class Learned {
    private Learned() {}

    /** How many horns a statement is worth by its source. */
    static double worth(Provenance source) {
        return switch (source.basis()) {
            case PUBLISHED, THIS_SHOP -> 20;
            case COMMON_PRACTICE -> 10;
            case MEMORY -> 4;
        };
    }

    /**
     * The shares after counting.
     *
     * @param told shares, which add up to 1
     * @param worth how many horns they are worth, above 0
     * @param counts horns by the same names; others are passed over
     */
    static Map<String, Double> shares(Map<String, Double> told, double worth, Map<String, Integer> counts) {
        int all = told.keySet().stream()
                .mapToInt(name -> counts.getOrDefault(name, 0))
                .sum();
        Map<String, Double> shares = new LinkedHashMap<>();
        told.forEach((name, share) -> shares.put(name, (worth * share + counts.getOrDefault(name, 0)) / (worth + all)));
        return shares;
    }
}
