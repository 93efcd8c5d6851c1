package hornbook.viewer.honesty;

import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.viewer.widget.Words;
import hornbook.viewer.work.Reached;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Two plots over the years and what they come to in words; while it is reckoned, how far it is. */
public final class HonestyPane extends VBox {
    private final Label doing = Words.text("", "words");
    private final ProgressBar bar = new ProgressBar();
    private final HBox busy;
    private final Label said = Words.text("", "banner");
    private final VBox inside = new VBox();

    private @Nullable HonestyAnswer drawn;

    /** @param leave puts the pane away */
    public HonestyPane(HonestyModel model, Runnable leave) {
        getStyleClass().add("honesty");
        getStylesheets()
                .add(Objects.requireNonNull(HonestyPane.class.getResource("honesty.css"))
                        .toExternalForm());
        Button stop = button("honesty-stop", "Stop", model::stop);
        busy = new HBox(bar, doing, stop);
        busy.getStyleClass().add("panel-head");
        HBox.setHgrow(doing, Priority.ALWAYS);
        doing.setMaxWidth(Double.MAX_VALUE);
        inside.getStyleClass().add("inside");
        ScrollPane scroll = new ScrollPane(inside);
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        Label title = Words.text("How honest estimates were", "card-title");
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        HBox head = new HBox(title, button("honesty-back", "Back", leave));
        head.getStyleClass().add("panel-head");
        getChildren().addAll(head, said, busy, scroll);
        model.onChange(this::show);
    }

    private static Button button(String id, String words, Runnable press) {
        Button button = new Button(words);
        button.setId(id);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(pressed -> press.run());
        return button;
    }

    private void show(HonestyView view) {
        Reached reached = view.reached();
        present(busy, reached != null);
        if (reached != null) {
            bar.setProgress(reached.fraction());
            doing.setText(Words.sentence(reached.doing()));
        }
        said.setText(view.said());
        present(said, !view.said().isEmpty());
        HonestyAnswer answer = view.answer();
        if (answer != null && !answer.equals(drawn)) {
            drawn = answer;
            draw(answer);
        }
    }

    private void draw(HonestyAnswer answer) {
        inside.getChildren().clear();
        answer.remarks().forEach(remark -> add(Words.text(Words.sentence(remark), "found")));
        if (answer.jobs() == 0) {
            return;
        }
        if (answer.logError() != null && answer.bookLogError() != null) {
            add(Words.text(
                    "A job usually took %.2f times its P50, or that much less; by the book alone %.2f times."
                            .formatted(Math.exp(answer.logError()), Math.exp(answer.bookLogError())),
                    "words"));
        }
        if (!answer.over().isEmpty()) {
            add(Words.text(
                    "Jobs that took no longer than P50 and P80, twenty at a time; dashed where they ought to lie",
                    "heading"));
            add(new CoveragePlot(answer.over()));
        }
        add(Words.text("Each job: what it took against its P50; a square ran over P80", "heading"));
        add(new TruthPlot(answer.lines()));
    }

    private void add(Node node) {
        inside.getChildren().add(node);
    }

    private static void present(Node node, boolean there) {
        node.setVisible(there);
        node.setManaged(there);
    }
}
