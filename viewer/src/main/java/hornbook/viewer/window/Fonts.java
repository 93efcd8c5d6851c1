package hornbook.viewer.window;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.scene.text.Font;

/** The type we bring along: Inter to read, DejaVu Sans for the signs Inter lacks (flat, sharp, natural, diameter). */
final class Fonts {
    private static final List<String> FILES = List.of("Inter-Regular.ttf", "Inter-Bold.ttf", "DejaVuSans.ttf");
    private static final double ANY_SIZE = 12;

    private Fonts() {}

    /** Makes them known to JavaFX; what is loaded so also serves as fallback for single signs. */
    static void load() {
        FILES.forEach(Fonts::load);
    }

    private static void load(String name) {
        try (InputStream file = Fonts.class.getResourceAsStream("fonts/" + name)) {
            if (file == null || Font.loadFont(file, ANY_SIZE) == null) {
                throw new IllegalStateException("font " + name + " cannot be used");
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
