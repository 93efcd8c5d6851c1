package hornbook.viewer.jobs;

import java.nio.file.Path;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/** A photo as it was held, for the toolkit shows it as the camera wrote it down, portraits on their side. */
final class Upright {
    private static final int ON_ITS_SIDE = 5;

    private Upright() {}

    /**
     * Reads a picture. May take a while.
     *
     * @param orientation as Exif numbers it (JEITA CP-3451, tag 274), 1 to 8
     * @param high no higher than this, in points; 0 for every pixel
     */
    static Image read(Path file, int orientation, double high) {
        boolean side = orientation >= ON_ITS_SIDE;
        Image written = new Image(file.toUri().toString(), side ? high : 0, side ? 0 : high, true, true, false);
        return orientation == 1 || written.isError() ? written : turned(written, orientation);
    }

    private static Image turned(Image written, int orientation) {
        int w = (int) written.getWidth();
        int h = (int) written.getHeight();
        int[] from = new int[w * h];
        written.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), from, 0, w);
        boolean side = orientation >= ON_ITS_SIDE;
        int width = side ? h : w;
        int height = side ? w : h;
        int[] to = new int[w * h];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                to[y * width + x] = from[source(orientation, x, y, w, h)];
            }
        }
        WritableImage upright = new WritableImage(width, height);
        upright.getPixelWriter().setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), to, 0, width);
        return upright;
    }

    /** Where the pixel of an upright picture lies in the one written down. */
    private static int source(int orientation, int x, int y, int w, int h) {
        return switch (orientation) {
            case 2 -> y * w + (w - 1 - x);
            case 3 -> (h - 1 - y) * w + (w - 1 - x);
            case 4 -> (h - 1 - y) * w + x;
            case 5 -> x * w + y;
            case 6 -> (h - 1 - x) * w + y;
            case 7 -> (h - 1 - x) * w + (w - 1 - y);
            case 8 -> x * w + (w - 1 - y);
            default -> y * w + x;
        };
    }
}
