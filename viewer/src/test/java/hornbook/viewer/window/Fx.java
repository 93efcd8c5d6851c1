package hornbook.viewer.window;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** The JavaFX thread as tests use it: headless, started once in a JVM. */
public final class Fx {
    private static final int SECONDS = 20;
    private static final int FRAMES_TO_SETTLE = 3;

    private Fx() {}

    public static void start() {
        CountDownLatch started = new CountDownLatch(1);
        try {
            Platform.startup(started::countDown);
        } catch (IllegalStateException running) {
            return;
        }
        Platform.setImplicitExit(false);
        await(started);
    }

    /** Runs on the JavaFX thread and waits for what comes of it. */
    public static <T> T on(Callable<T> act) {
        CompletableFuture<T> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                done.complete(act.call());
            } catch (Throwable thrown) {
                done.completeExceptionally(thrown);
            }
        });
        return done.orTimeout(SECONDS, TimeUnit.SECONDS).join();
    }

    public static void run(Runnable act) {
        on(() -> {
            act.run();
            return true;
        });
    }

    /** Lets a few frames pass, so that layout and events have happened. */
    public static void settle() {
        CountDownLatch passed = new CountDownLatch(FRAMES_TO_SETTLE);
        AnimationTimer timer = new AnimationTimer() {
            @Override
            public void handle(long now) {
                passed.countDown();
            }
        };
        run(timer::start);
        await(passed);
        run(timer::stop);
    }

    /** Keeps a picture of the scene at 1280 by 800 in target/pictures, for a person to look at. */
    public static Path picture(Scene scene, String name) {
        return picture(scene, name, 1280, 800);
    }

    /** As {@link #picture(Scene, String)}, at another size in pixels. */
    public static Path picture(Scene scene, String name, int wide, int high) {
        run(() -> {
            scene.getWindow().setWidth(wide);
            scene.getWindow().setHeight(high);
        });
        settle();
        WritableImage image = on(() -> scene.snapshot(null));
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                copy.setRGB(x, y, image.getPixelReader().getArgb(x, y));
            }
        }
        Path file = Path.of("target", "pictures", name + ".png");
        try {
            Files.createDirectories(file.getParent());
            ImageIO.write(copy, "png", file.toFile());
        } catch (IOException cannot) {
            throw new UncheckedIOException(cannot);
        }
        return file;
    }

    private static void await(CountDownLatch latch) {
        try {
            if (!latch.await(SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("JavaFX does not answer");
            }
        } catch (InterruptedException stop) {
            throw new IllegalStateException(stop);
        }
    }
}
