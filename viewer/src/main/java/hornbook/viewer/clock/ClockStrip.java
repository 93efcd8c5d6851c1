package hornbook.viewer.clock;

import hornbook.shared.job.OnBench;
import hornbook.viewer.ask.AskForm;
import hornbook.viewer.clock.ClockView.Ticking;
import hornbook.viewer.pick.PickPane;
import hornbook.viewer.widget.Words;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;

/** Below every screen: the clocks that run and what is done soaking, and the choice that the key opens. */
public final class ClockStrip extends VBox {
    private final ClockModel model;
    private final PickPane pick;
    private final AskForm ask;
    private final Label running = Words.text("", "clock-line");
    private final Label ready = Words.text("", "clock-ready");
    private final Label trouble = Words.text("", "banner");

    private ClockView drawn = ClockView.NOTHING;
    private Elapsed elapsed = Elapsed.of(List.of());
    private @Nullable Node before;

    public ClockStrip(ClockModel model) {
        this.model = model;
        getStyleClass().add("clock-strip");
        pick = new PickPane(model::choose, model::leave);
        ask = new AskForm(model::answer, model::leave);
        running.setMaxWidth(Double.MAX_VALUE);
        ready.setMaxWidth(Double.MAX_VALUE);
        getChildren().addAll(pick, ask, trouble, ready, running);
        model.onChange(this::draw);
        Timeline tick = new Timeline(new KeyFrame(Duration.seconds(1), passed -> tell(drawn)));
        tick.setCycleCount(Animation.INDEFINITE);
        sceneProperty().subscribe(scene -> {
            if (scene == null) {
                tick.stop();
            } else {
                tick.play();
            }
        });
    }

    private void draw(ClockView view) {
        if (view.open() && !drawn.open() && getScene() != null) {
            before = getScene().getFocusOwner();
        }
        boolean left = drawn.open() && !view.open();
        if (!view.bench().equals(drawn.bench())) {
            elapsed = Elapsed.of(view.bench());
        }
        drawn = view;
        pick.show(view.pick());
        ask.show(view.ask());
        show(trouble, view.trouble() == null ? "" : view.trouble());
        tell(view);
        // The keyboard goes back to where it was.
        if (left && before != null) {
            before.requestFocus();
            before = null;
        }
    }

    private void tell(ClockView view) {
        show(running, line(view.ticking()));
        show(ready, view.bench().stream().flatMap(this::ready).collect(Collectors.joining("   ")));
    }

    private String line(List<Ticking> ticking) {
        return ticking.stream()
                        .map(t -> model.title(t.clock().task()) + ", " + t.job().id() + "  " + elapsed.of(t.clock()))
                        .collect(Collectors.joining("   \u00b7   "))
                + (ticking.isEmpty() ? "" : "   \u00b7   Ctrl+J");
    }

    private Stream<String> ready(OnBench on) {
        return on.standing().timers().stream()
                .filter(elapsed::ready)
                .map(soaking -> "Ready: " + soaking.what() + ", " + on.id() + ".");
    }

    private static void show(Label label, String words) {
        if (!label.getText().equals(words) || label.isVisible() == words.isEmpty()) {
            label.setText(words);
            label.setVisible(!words.isEmpty());
            label.setManaged(!words.isEmpty());
        }
    }
}
