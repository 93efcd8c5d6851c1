package hornbook.viewer.jobs;

import hornbook.viewer.jobs.JobPage.StageLine;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;

/** The stages of the job in order: which have had time, which is worked on now. */
final class StageRow extends FlowPane {
    StageRow(List<StageLine> stages) {
        getStyleClass().add("stage-row");
        stages.forEach(stage -> getChildren().add(label(stage)));
    }

    private static Label label(StageLine stage) {
        String sign = stage.running() ? "\u25b6 " : stage.minutes() > 0 ? "\u2713 " : "";
        Label label = new Label(sign + stage.title() + (stage.minutes() > 0 ? " " + stage.minutes() : ""));
        label.getStyleClass().addAll("stage", stage.running() ? "running" : stage.minutes() > 0 ? "had" : "open");
        label.setAccessibleText(stage.title()
                + (stage.running() ? ", being worked on" : "")
                + (stage.minutes() > 0 ? ", " + stage.minutes() + " minutes" : ", not yet"));
        return label;
    }
}
