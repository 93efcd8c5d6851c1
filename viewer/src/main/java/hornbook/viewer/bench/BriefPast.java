package hornbook.viewer.bench;

import hornbook.indexer.brief.BriefAnswer;
import hornbook.indexer.brief.PastJob;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * How the last ones went.
 *
 * @param openJob opens the card of a job
 */
record BriefPast(Consumer<String> openJob) {
    List<Node> nodes(BriefAnswer brief, Phrases phrases) {
        List<Node> nodes = new ArrayList<>();
        brief.jobs().forEach(job -> nodes.add(job(job, phrases)));
        if (nodes.isEmpty()) {
            nodes.add(Words.text("Nothing like it was here before.", "quiet"));
        }
        return nodes;
    }

    private Node job(PastJob job, Phrases phrases) {
        String went = job.went() == null ? "" : "Went " + job.went() + ". ";
        String minutes = job.minutes() == null ? "" : "  \u00b7  " + job.minutes() + " min";
        VBox words = new VBox(
                Words.text(job.tookIn().getYear() + "  " + job.kind() + minutes, "hit-title"),
                Words.text(phrases.title(job.model()) + ": " + job.complaint(), "words"));
        if (!(went + job.wentNote()).isBlank()) {
            words.getChildren().add(Words.text(went + Words.sentence(job.wentNote()), "words"));
        }
        if (!job.measured().isEmpty()) {
            words.getChildren().add(Words.text(String.join("; ", job.measured()), "quiet"));
        }
        Tile tile = new Tile(() -> openJob.accept(job.id()), words);
        HBox.setHgrow(words, Priority.ALWAYS);
        tile.getStyleClass().add("link");
        tile.setId("past-" + job.id());
        tile.setAccessibleText(job.tookIn() + ", " + job.kind() + ", " + phrases.title(job.model()));
        return tile;
    }
}
