package hornbook.viewer.honesty;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.window.Fx;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demonstration shop's jobs replayed in the order of time; the record is the command's own. */
class HonestyModelTest {
    @TempDir
    static Path folder;

    private static Workshop shop;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder.resolve("shop"));
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @Test
    void tellsHowFarItIsAndDrawsWhatTheCommandSays() {
        List<Double> reached = new ArrayList<>();
        HonestyModel model = new HonestyModel(Work.atOnce(), shop::honesty);
        model.onChange(view -> {
            if (view.reached() != null) {
                reached.add(view.reached().fraction());
            }
        });
        model.ask();
        assertThat(reached)
                .hasSizeGreaterThan(100)
                .last()
                .satisfies(far -> assertThat(far).isGreaterThan(0.9));
        assertThat(model.view().answer()).isEqualTo(shop.honesty().answer());
        Fx.start();
        Fx.run(() -> {
            HonestyPane pane = new HonestyPane(model, () -> {});
            Scene scene = new Scene(pane, 900, 700);
            Stage stage = new Stage();
            stage.setScene(scene);
            stage.show();
            Node coverage = scene.lookup("#coverage-plot");
            assertThat(coverage.getAccessibleText()).startsWith("Shares of jobs within P50 and P80");
            assertThat(scene.getRoot().lookupAll(".plot-p80-dot"))
                    .hasSize(model.view().answer().over().size());
            assertThat(scene.getRoot().lookupAll(".plot-over")).hasSize((int) model.view().answer().lines().stream()
                    .filter(job -> job.tookMin() > job.p80Min())
                    .count());
        });
    }

    /** Stopped after the first word of it: nothing more comes. */
    @Test
    void itCanBeStopped() throws Exception {
        LinkedBlockingQueue<Runnable> news = new LinkedBlockingQueue<>();
        try (Work work = Work.beside(news::add)) {
            CountDownLatch first = new CountDownLatch(1);
            HonestyModel model = new HonestyModel(work, shop::honesty);
            model.onChange(view -> {
                if (view.reached() != null && view.reached().total() > 0) {
                    first.countDown();
                }
            });
            model.ask();
            while (first.getCount() > 0) {
                news.poll(30, TimeUnit.SECONDS).run();
            }
            model.stop();
            assertThat(model.view().said()).startsWith("Stopped");
            for (Runnable late = news.poll(2, TimeUnit.SECONDS); late != null; late = news.poll(2, TimeUnit.SECONDS)) {
                late.run();
            }
            assertThat(model.view().answer()).isNull();
            assertThat(model.view().said()).startsWith("Stopped");
        }
    }
}
