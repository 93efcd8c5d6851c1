package hornbook.viewer.jobs;

import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.viewer.widget.Words;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The work expected, how long it may take, and what that rests on. */
final class ExpectedPane extends VBox {
    private static final int DIGITS = 3;

    private final JobsModel model;

    ExpectedPane(JobsModel model, Expected expected) {
        this.model = model;
        getStyleClass().add("expected");
        EstimateAnswer answer = expected.answer();
        if (answer == null) {
            getChildren().add(Words.text("No work is listed. Press E again and choose what is expected.", "quiet"));
        } else {
            sum(answer);
        }
        if (!expected.planned() && !expected.tasks().isEmpty()) {
            getChildren().add(keep());
        }
        expected.tasks().forEach(task -> getChildren().add(row(task)));
        Button more = new Button("More work  E");
        more.setOnAction(pressed -> model.begin(Act.ESTIMATE));
        getChildren().add(more);
    }

    private void sum(EstimateAnswer answer) {
        Label words = Words.text(
                hours(answer.p50Min()) + " as likely as not, " + hours(answer.p80Min()) + " in four of five",
                "expected-sum");
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        Button quote = new Button("Quote " + answer.p80Min() + " min");
        quote.setId("quote");
        quote.setMinWidth(Region.USE_PREF_SIZE);
        quote.setOnAction(pressed -> model.quote(answer.p80Min()));
        HBox row = new HBox(words, quote);
        row.getStyleClass().add("panel-head");
        EstimateAnswer.FromJobs from = answer.fromJobs();
        getChildren()
                .addAll(
                        row,
                        Words.text(
                                "From " + from.all() + " jobs: " + from.instrument() + " of this instrument, "
                                        + from.make() + " of this make, " + from.model() + " of this model. The book"
                                        + " alone says " + hours(answer.bookMin()) + ". Most doubt: "
                                        + model.title(answer.drives()) + ".",
                                "quiet"));
        answer.remarks().forEach(remark -> getChildren().add(Words.text(Words.sentence(remark), "quiet")));
    }

    /** It is not in the books yet: the first change, or this, plans it. */
    private HBox keep() {
        Label words = Words.text("What such jobs usually have. A change plans it.", "quiet");
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        Button keep = new Button("Plan this");
        keep.setId("plan-usual");
        keep.setMinWidth(Region.USE_PREF_SIZE);
        keep.setOnAction(pressed -> model.expected().keep());
        HBox row = new HBox(words, keep);
        row.getStyleClass().add("panel-head");
        return row;
    }

    private HBox row(TaskCount task) {
        String title = model.title(task.task());
        Label words = Words.text(title, "words");
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        Button fewer = step("\u2212", task, -1, "One fewer of " + title);
        TextField count = count(task, title);
        Button more = step("+", task, 1, "One more of " + title);
        HBox row = new HBox(words, fewer, count, more);
        row.getStyleClass().add("panel-head");
        return row;
    }

    /** Written over and taken with Enter, or when it is left. */
    private TextField count(TaskCount task, String title) {
        String now = Integer.toString(task.count());
        TextField count = new TextField(now);
        count.setId("count-" + task.task());
        count.getStyleClass().add("expected-count");
        count.setPrefColumnCount(DIGITS);
        count.setMinWidth(Region.USE_PREF_SIZE);
        count.setAccessibleText("How many of " + title);
        Runnable take = () -> {
            if (count.getText().strip().matches("\\d{1,3}")) {
                model.expected()
                        .change(task.task(), Integer.parseInt(count.getText().strip()));
            } else {
                count.setText(now);
            }
        };
        count.setOnAction(entered -> take.run());
        count.focusedProperty().subscribe(focused -> {
            if (!focused && !count.getText().equals(now)) {
                take.run();
            }
        });
        return count;
    }

    private Button step(String sign, TaskCount task, int by, String described) {
        Button button = new Button(sign);
        button.setAccessibleText(described);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(pressed -> model.expected().change(task.task(), task.count() + by));
        return button;
    }

    private static String hours(long minutes) {
        return minutes < 60 ? minutes + " min" : "%d h %02d".formatted(minutes / 60, minutes % 60);
    }
}
