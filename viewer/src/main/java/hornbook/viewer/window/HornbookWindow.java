package hornbook.viewer.window;

import java.nio.file.Path;
import javafx.geometry.Rectangle2D;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** The one window: what is in it may change, how it is dressed stays. */
public final class HornbookWindow {
    private static final double USUAL_WIDTH = 1280;
    private static final double USUAL_HEIGHT = 800;
    private static final double OF_THE_SCREEN = 0.9;
    private static final double LEAST_WIDTH = 900;
    private static final double LEAST_HEIGHT = 600;

    private final Stage stage = new Stage();
    private final Scene scene;
    private final Dress dress;

    /**
     * @param title for the system's task bar
     * @param settings the folder that keeps how the person wants it
     */
    public HornbookWindow(String title, Path settings) {
        Rectangle2D desk = Screen.getPrimary().getVisualBounds();
        scene = new Scene(
                new Region(),
                Math.min(desk.getWidth(), Math.max(USUAL_WIDTH, desk.getWidth() * OF_THE_SCREEN)),
                Math.min(desk.getHeight(), Math.max(USUAL_HEIGHT, desk.getHeight() * OF_THE_SCREEN)));
        Fonts.load();
        dress = new Dress(scene, settings);
        FocusMark.over(scene);
        stage.setTitle(title);
        stage.setScene(scene);
        stage.setMinWidth(Math.min(LEAST_WIDTH, desk.getWidth()));
        stage.setMinHeight(Math.min(LEAST_HEIGHT, desk.getHeight()));
    }

    /** Fills it with an opened shop: its screens, and the keyboard for them. */
    public void present(Shell shell) {
        put(shell);
        new Keys(scene, shell, dress).install();
        shell.topBar().onLook(() -> choose(shell, dress.settings().look().next()));
        shell.topBar().tellLook(dress.settings().look());
    }

    /** Fills it with something other than a shop. */
    public void put(Parent root) {
        scene.setRoot(root);
        dress.apply();
    }

    private void choose(Shell shell, Look look) {
        dress.change(dress.settings().with(look));
        shell.topBar().tellLook(look);
    }

    public void show() {
        stage.show();
    }

    public Stage stage() {
        return stage;
    }
}
