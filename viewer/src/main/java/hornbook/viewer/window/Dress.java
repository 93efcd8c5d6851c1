package hornbook.viewer.window;

import atlantafx.base.theme.PrimerLight;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.application.Application;
import javafx.application.ColorScheme;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Window;

/** Puts colours and size of type on a scene, and keeps the person's choice. */
final class Dress {
    private static final double SMALLEST_TYPE = 17;
    private static final double LARGEST_TYPE = 30;
    /** A screen of 800 lines has the smallest type; every 110 lines more add a pixel. */
    private static final double LOW_SCREEN = 800;

    private static final double LINES_A_PIXEL = 110;

    private final Scene scene;
    private final Path folder;
    private WindowSettings settings;

    Dress(Scene scene, Path folder) {
        this.scene = scene;
        this.folder = folder;
        this.settings = WindowSettings.read(folder);
        Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
        // Only while the window shows: the toolkit outlives it and would keep all of it.
        Platform.getPreferences()
                .colorSchemeProperty()
                .when(scene.windowProperty().flatMap(Window::showingProperty).orElse(false))
                .subscribe(this::apply);
        scene.heightProperty().subscribe(this::resize);
        apply();
    }

    WindowSettings settings() {
        return settings;
    }

    void change(WindowSettings wanted) {
        settings = wanted;
        wanted.write(folder);
        apply();
    }

    /** Dresses the scene as it now is. */
    void apply() {
        scene.getStylesheets().setAll(sheets(settings.look(), systemIsDark()));
        resize();
    }

    private void resize() {
        scene.getRoot().setStyle("-fx-font-size: %.1fpx;".formatted(typeSize(scene.getHeight()) * settings.zoom()));
    }

    /** Size of plain type in pixels for a scene of so many lines. */
    static double typeSize(double lines) {
        return Math.clamp(SMALLEST_TYPE + (lines - LOW_SCREEN) / LINES_A_PIXEL, SMALLEST_TYPE, LARGEST_TYPE);
    }

    private static boolean systemIsDark() {
        return Platform.getPreferences().getColorScheme() == ColorScheme.DARK;
    }

    static List<String> sheets(Look look, boolean systemIsDark) {
        Look shown = look != Look.SYSTEM ? look : systemIsDark ? Look.DARK : Look.LIGHT;
        return List.of(sheet(shown.name().toLowerCase(Locale.ROOT)), sheet("shell"));
    }

    private static String sheet(String name) {
        return Objects.requireNonNull(Dress.class.getResource(name + ".css")).toExternalForm();
    }
}
