package hornbook.viewer.diagnose;

import hornbook.catalogue.diagnose.Advice;
import hornbook.catalogue.diagnose.DiagnoseAnswer;
import hornbook.catalogue.diagnose.DiagnoseAnswer.Cure;
import hornbook.catalogue.diagnose.DiagnoseAnswer.QuirkLine;
import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.viewer.widget.Words;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** How the likeliest cause is cured: what to mind first, what is done, how long it may take, and where that leads. */
final class CurePane extends VBox {
    private final DiagnoseModel model;

    CurePane(DiagnoseModel model, DiagnoseView view, Told told, Cure cure) {
        this.model = model;
        getStyleClass().add("cure");
        DiagnoseAnswer answer = told.answer();
        boolean found = answer.advice() == Advice.CURE;
        String cause = answer.causes().getFirst().text();
        getChildren().add(Words.text(found ? "Cure" : "If it is that: " + cause, "heading"));
        cure.quirks().forEach(quirk -> getChildren().add(quirk(quirk)));
        getChildren()
                .add(Words.text(
                        "%s: %.0f to %.0f min a %s by the book"
                                .formatted(cure.remedy(), cure.minutesLow(), cure.minutesHigh(), cure.per()),
                        "found"));
        cautions(cure);
        time(told.time());
        if (view.complaint().job() != null) {
            getChildren().add(acts(told.time(), found));
        }
    }

    private static VBox quirk(QuirkLine quirk) {
        boolean stop = quirk.caution() == CautionLevel.STOP;
        return new VBox(
                Words.text((stop ? "STOP: " : "") + quirk.title(), stop ? "stop" : "hit-title"),
                Words.text(Words.sentence(quirk.whatToDo()), "words"));
    }

    private void cautions(Cure cure) {
        if (!cure.cautions().isEmpty()) {
            getChildren()
                    .add(Words.text(
                            "Take care. The safety data sheet, local codes and licensed practice go before these words.",
                            "heed"));
            cure.cautions()
                    .forEach(caution -> getChildren()
                            .add(new VBox(
                                    Words.text(caution.title(), "hit-title"),
                                    Words.text(Words.sentence(caution.text()), "words"))));
        }
    }

    private void time(@Nullable EstimateAnswer time) {
        if (time == null) {
            return;
        }
        getChildren().add(Words.text("Work that cures it, each once", "heading"));
        time.lines()
                .forEach(line -> getChildren()
                        .add(Words.text(
                                "%s: %d min as likely as not, %d in four of five"
                                        .formatted(line.title(), line.p50Min(), line.p80Min()),
                                "words")));
        EstimateAnswer.FromJobs from = time.fromJobs();
        getChildren()
                .add(Words.text(
                        "Together %d and %d min, from %d jobs here, %d of this make, %d of this model."
                                .formatted(time.p50Min(), time.p80Min(), from.all(), from.make(), from.model()),
                        "quiet"));
    }

    private FlowPane acts(@Nullable EstimateAnswer time, boolean found) {
        FlowPane acts = new FlowPane();
        acts.getStyleClass().add("choices");
        if (time != null) {
            acts.getChildren().add(act("plan-cure", "Make this the job\u2019s tasks", found, model::plan));
        }
        if (found) {
            acts.getChildren().add(act("write-cause", "Write it down as found", false, model::found));
        }
        return acts;
    }

    private static Button act(String id, String words, boolean main, Runnable press) {
        Button button = new Button(words);
        button.setId(id);
        button.setMinWidth(USE_PREF_SIZE);
        if (main) {
            button.getStyleClass().add("main-act");
        }
        button.setOnAction(pressed -> press.run());
        return button;
    }
}
