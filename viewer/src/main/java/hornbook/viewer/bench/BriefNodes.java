package hornbook.viewer.bench;

import hornbook.indexer.brief.BriefAnswer;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;

/** A part of a brief as nodes. */
final class BriefNodes {
    private final BriefBites bites;
    private final BriefFetch fetch;
    private final BriefPast past;

    /**
     * @param pull shows a drawer in its cabinet
     * @param openJob opens the card of a job
     */
    BriefNodes(BenchModel model, Consumer<String> pull, Consumer<String> openJob) {
        this.bites = new BriefBites(model);
        this.fetch = new BriefFetch(pull);
        this.past = new BriefPast(openJob);
    }

    List<Node> of(BriefPart part, BriefAnswer brief, Phrases phrases) {
        return switch (part) {
            case BITES -> bites.nodes(brief, phrases);
            case FETCH -> fetch.nodes(brief);
            case BUILD -> BriefBuild.nodes(brief, phrases);
            case BEFORE -> past.nodes(brief, phrases);
        };
    }
}
