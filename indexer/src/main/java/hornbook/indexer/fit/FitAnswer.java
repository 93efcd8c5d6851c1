package hornbook.indexer.fit;

import java.util.List;

/**
 * What can be made to fit.
 *
 * @param kind id of the kind asked for
 * @param asked what was understood, for people
 * @param plans cheapest first; what is set aside, where it was asked for, before the rest
 * @param refused the nearest that will not do, and why
 * @param buy what would serve, where nothing will do
 * @param remarks what was taken for granted
 */
public record FitAnswer(
        String kind,
        String title,
        List<String> asked,
        List<FitPlan> plans,
        List<Refused> refused,
        List<String> buy,
        List<String> remarks) {
    /** Keeps its own copies. */
    public FitAnswer {
        asked = List.copyOf(asked);
        plans = List.copyOf(plans);
        refused = List.copyOf(refused);
        buy = List.copyOf(buy);
        remarks = List.copyOf(remarks);
    }
}
