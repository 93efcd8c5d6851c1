package hornbook.indexer.fit;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A lot, as it is or with the work that makes it fit.
 *
 * @param lot id of the lot, {@code own} for the piece in hand
 * @param drawer id of the drawer or place; missing for the piece in hand
 * @param label of the drawer as written, or the place's name
 * @param onHand a number, or few, some or plenty
 * @param minutes of work, without fetching, drying and soaking
 * @param charge for spoiling something better, minutes
 * @param total both
 * @param steps in the order of work; none where it fits as it is
 * @param reserve set aside: only shown where that was asked for
 * @param left pieces set aside that remain
 * @param tools to fetch, with their drawers
 * @param withTool missing where no tool that is lent, missing or broken would make it cheaper
 * @param askFirst what a person has to answer before this is begun
 * @param assumed what its lot does not say and was taken as usual
 * @param shows what it is besides, which nobody asked about
 * @param mind where it lies still on a horn, what its note says, what it is charged for
 * @param cautions of the work; empty where none is hot, sharp, spinning or fuming
 */
public record FitPlan(
        String lot,
        String title,
        @Nullable String drawer,
        @Nullable String label,
        @Nullable String onHand,
        double minutes,
        double charge,
        double total,
        List<FitStep> steps,
        boolean reserve,
        @Nullable Integer left,
        List<ToolWanted> tools,
        @Nullable CheaperWith withTool,
        List<String> askFirst,
        List<String> assumed,
        Map<String, String> shows,
        List<String> mind,
        List<String> cautions) {
    /** Keeps its own copies. */
    public FitPlan {
        steps = List.copyOf(steps);
        tools = List.copyOf(tools);
        askFirst = List.copyOf(askFirst);
        assumed = List.copyOf(assumed);
        mind = List.copyOf(mind);
        cautions = List.copyOf(cautions);
    }
}
