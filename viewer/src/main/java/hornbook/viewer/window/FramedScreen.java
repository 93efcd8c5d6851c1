package hornbook.viewer.window;

import java.util.Objects;
import java.util.Set;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;

/** A screen in a frame of its own style, which asks again when it comes into view and when the shop changed. */
public abstract class FramedScreen implements Screen {
    private final ScreenName name;
    private final BorderPane frame = new BorderPane();

    /**
     * @param style its style class
     * @param sheet its style sheet, beside the screen's class
     */
    protected FramedScreen(ScreenName name, String style, String sheet) {
        this.name = name;
        frame.getStyleClass().add(style);
        frame.getStylesheets()
                .add(Objects.requireNonNull(getClass().getResource(sheet)).toExternalForm());
    }

    /** What stands in the middle and at the sides. */
    protected final BorderPane frame() {
        return frame;
    }

    /** Asks again what it shows. */
    protected abstract void refresh();

    @Override
    public final ScreenName name() {
        return name;
    }

    @Override
    public final Node node() {
        return frame;
    }

    @Override
    public final void shown() {
        refresh();
        Platform.runLater(this::takeKeyboard);
    }

    @Override
    public final void changed(Set<String> kinds) {
        refresh();
    }
}
