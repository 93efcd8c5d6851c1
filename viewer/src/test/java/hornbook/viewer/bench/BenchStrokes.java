package hornbook.viewer.bench;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;

/**
 * What answers at the bench cost the thread that shows: processor time of drawing each answer and each brief, so that a
 * busy machine does not count. Prints the median, 90 and 99 in a hundred and the longest, in milliseconds.
 */
public final class BenchStrokes {
    private static final int ROUNDS = 40;
    private static final int TO_WARM = 5;

    private BenchStrokes() {}

    /** Plays rounds of six answers each on the demonstration shop. */
    public static void main(String[] none) throws Exception {
        Fx.start();
        Path folder = Files.createTempDirectory("bench-strokes");
        List<Double> spent = new ArrayList<>();
        try (Workshop shop = DemoShop.in(folder.resolve("shop"));
                Work work = Work.beside(task -> Platform.runLater(() -> spent.add(milliseconds(task))))) {
            BenchModel model = OnTheBench.model(shop, work);
            Fx.run(() -> {
                HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
                BenchScreen screen =
                        new BenchScreen(model, OnTheBench.wrong(shop), drawer -> {}, job -> {}, Optional::empty);
                made.present(new Shell("The Warm Room", List.of(screen)));
                made.show();
            });
            for (int round = 0; round < ROUNDS; round++) {
                if (round == TO_WARM) {
                    Fx.run(spent::clear);
                }
                round(model);
            }
        }
        List<Double> sorted = spent.stream().sorted().toList();
        System.out.printf(
                "%d drawings: median %.1f ms, 90 in 100 %.1f ms, 99 in 100 %.1f ms, longest %.1f ms%n",
                sorted.size(),
                sorted.get(sorted.size() / 2),
                sorted.get(sorted.size() * 9 / 10),
                sorted.get(sorted.size() * 99 / 100),
                sorted.getLast());
        System.exit(0);
    }

    private static void round(BenchModel model) throws InterruptedException {
        Fx.run(model::anew);
        Thread.sleep(300);
        for (String[] look : new String[][] {
            {"family-member", "alto"},
            {"bell-brace", "three-point"},
            {"octave-mechanism", "auto-slide"},
            {"tone-hole-make", "soldered-on"},
            {"resonator-type", "none"},
            {"table-form", "side-by-side-flat"}
        }) {
            Fx.run(() -> {
                model.choose(look[0]);
                model.press(look[1]);
            });
            Thread.sleep(300);
        }
    }

    private static double milliseconds(Runnable task) {
        var threads = ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadCpuTime();
        task.run();
        return (threads.getCurrentThreadCpuTime() - before) / 1e6;
    }
}
