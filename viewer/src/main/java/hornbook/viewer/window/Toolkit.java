package hornbook.viewer.window;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Stage;

/** Starts JavaFX, shows one window, and waits until it is closed. Once a process: JavaFX cannot be started again. */
public final class Toolkit {
    private static final int FRAMES_UNTIL_DRAWN = 3;

    private Toolkit() {}

    /**
     * @param window makes the window, on the JavaFX thread
     * @param shutAtOnce close it once its first frame is drawn
     */
    public static void showAndWait(Supplier<HornbookWindow> window, boolean shutAtOnce) {
        CountDownLatch closed = new CountDownLatch(1);
        AtomicReference<Throwable> fault = new AtomicReference<>();
        Platform.startup(() -> {
            try {
                show(window.get(), closed, shutAtOnce);
            } catch (RuntimeException | Error thrown) {
                fault.set(thrown);
                closed.countDown();
            }
        });
        await(closed);
        Platform.exit();
        switch (fault.get()) {
            case null -> {}
            case RuntimeException thrown -> throw thrown;
            case Throwable thrown -> throw new IllegalStateException("the window cannot be opened", thrown);
        }
    }

    private static void show(HornbookWindow window, CountDownLatch closed, boolean shutAtOnce) {
        Stage stage = window.stage();
        stage.setOnHidden(gone -> closed.countDown());
        window.show();
        if (shutAtOnce) {
            afterFirstFrame(stage::hide);
        }
    }

    private static void afterFirstFrame(Runnable act) {
        new AnimationTimer() {
            private int frames;

            @Override
            public void handle(long now) {
                frames++;
                if (frames == FRAMES_UNTIL_DRAWN) {
                    stop();
                    act.run();
                }
            }
        }.start();
    }

    private static void await(CountDownLatch closed) {
        try {
            closed.await();
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }
}
