package hornbook.viewer.gauges;

import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;

/** Numbers in, answers while they are typed. */
public final class GaugesScreen implements Screen {
    private final BorderPane root = new BorderPane();
    private final HBox tabs = new HBox();
    private final Pane fit;
    private Pane now;

    /** @param pull shows a drawer in its cabinet */
    public GaugesScreen(
            FitModel fit,
            SizeModel size,
            ThreadModel thread,
            PadsModel pads,
            SpringModel springs,
            Consumer<String> pull) {
        this(List.of(
                new FitPane(fit, pull),
                new SizePane(size),
                new ThreadPane(thread),
                new PadsPane(pads, pull),
                new SpringPane(springs)));
    }

    private GaugesScreen(List<Pane> panes) {
        fit = panes.getFirst();
        now = fit;
        root.getStyleClass().add("gauges");
        root.getStylesheets()
                .add(Objects.requireNonNull(GaugesScreen.class.getResource("gauges.css"))
                        .toExternalForm());
        tabs.getStyleClass().add("gauge-tabs");
        ToggleGroup one = new ToggleGroup();
        panes.forEach(pane -> tabs.getChildren().add(tab(pane, one)));
        root.setTop(tabs);
        root.setCenter(now.node());
    }

    private ToggleButton tab(Pane pane, ToggleGroup one) {
        ToggleButton tab = new ToggleButton(pane.title());
        tab.setId("gauge-" + pane.title().toLowerCase(java.util.Locale.ROOT));
        tab.setToggleGroup(one);
        tab.setSelected(pane == now);
        tab.setOnAction(pressed -> {
            tab.setSelected(true);
            show(pane);
        });
        return tab;
    }

    private void show(Pane pane) {
        now = pane;
        root.setCenter(pane.node());
        pane.shown();
        Platform.runLater(pane::focus);
    }

    /** Brings fit to the front: another screen has filled its fields. */
    public void toFit() {
        ((ToggleButton) tabs.getChildren().getFirst()).setSelected(true);
        show(fit);
    }

    @Override
    public ScreenName name() {
        return ScreenName.FIT;
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public void shown() {
        show(now);
    }

    @Override
    public void takeKeyboard() {
        now.focus();
    }

    @Override
    public void changed(Set<String> kinds) {
        now.shown();
    }
}
