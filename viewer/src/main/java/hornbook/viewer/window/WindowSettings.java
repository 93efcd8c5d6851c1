package hornbook.viewer.window;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * How the person wants the window. Needs no touching: what is missing or spoilt is as usual.
 *
 * @param look its colours
 * @param zoom size of the type against the usual, 0.8 to 2
 */
public record WindowSettings(Look look, double zoom) {
    private static final Logger LOG = Logger.getLogger(WindowSettings.class.getName());
    private static final double SMALLEST = 0.8;
    private static final double LARGEST = 2;

    public static final WindowSettings USUAL = new WindowSettings(Look.SYSTEM, 1);

    public WindowSettings {
        zoom = Double.isFinite(zoom) ? Math.clamp(zoom, SMALLEST, LARGEST) : 1;
    }

    WindowSettings with(Look other) {
        return new WindowSettings(other, zoom);
    }

    WindowSettings zoomed(double factor) {
        return new WindowSettings(look, zoom * factor);
    }

    WindowSettings unzoomed() {
        return new WindowSettings(look, 1);
    }

    /** Reads {@code window.properties} in the folder. */
    static WindowSettings read(Path folder) {
        Properties lines = new Properties();
        try (Reader file = Files.newBufferedReader(file(folder))) {
            lines.load(file);
            return new WindowSettings(
                    Look.valueOf(lines.getProperty("look", "system").toUpperCase(Locale.ROOT)),
                    Double.parseDouble(lines.getProperty("zoom", "1")));
        } catch (IOException | IllegalArgumentException missingOrSpoilt) {
            return USUAL;
        }
    }

    /** Writes them; a folder that cannot be written costs no more than the wish. */
    void write(Path folder) {
        Properties lines = new Properties();
        lines.setProperty("look", look.name().toLowerCase(Locale.ROOT));
        lines.setProperty("zoom", Double.toString(zoom));
        try {
            Files.createDirectories(folder);
            try (Writer file = Files.newBufferedWriter(file(folder))) {
                lines.store(file, "Hornbook's window");
            }
        } catch (IOException cannot) {
            LOG.log(Level.INFO, "settings not kept", cannot);
        }
    }

    private static Path file(Path folder) {
        return folder.resolve("window.properties");
    }
}
