package hornbook.viewer.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class WorkTest {
    private final List<String> told = new ArrayList<>();
    private final Ends<String> ends =
            new Ends<>(told::add, thrown -> told.add("failed: " + thrown.getMessage()), r -> told.add(r.doing()));

    @Test
    void inTestsItRunsAtOnce() {
        Work.atOnce().read(progress -> "answer", ends);
        assertThat(told).containsExactly("answer");
    }

    @Test
    void whatIsThrownIsToldInsteadOfAnAnswer() {
        Work.atOnce()
                .read(
                        progress -> {
                            throw new IllegalStateException("no");
                        },
                        ends);
        assertThat(told).containsExactly("failed: no");
    }

    @Test
    void progressComesBeforeTheAnswer() {
        Work.atOnce()
                .write(
                        progress -> {
                            progress.reached(1, 2, "half");
                            return "all";
                        },
                        ends);
        assertThat(told).containsExactly("half", "all");
    }

    @Test
    void afterACancelNobodyIsToldAnythingAndTheWorkStops() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch cancelled = new CountDownLatch(1);
        Shown show = new Shown();
        try (Work work = Work.beside(show)) {
            Running running = work.write(
                    progress -> {
                        begun.countDown();
                        await(cancelled);
                        progress.reached(1, 2, "half");
                        progress.stopIfCancelled();
                        return "answer";
                    },
                    ends);
            await(begun);
            running.cancel();
            cancelled.countDown();
        }
        show.finish();
        assertThat(told).isEmpty();
    }

    @Test
    void aNewerQuestionCancelsTheOlder() throws Exception {
        CountDownLatch older = new CountDownLatch(1);
        Shown show = new Shown();
        try (Work work = Work.beside(show)) {
            Latest latest = work.latest();
            latest.ask(
                    progress -> {
                        await(older);
                        return "older";
                    },
                    ends);
            latest.ask(progress -> "newer", ends);
            older.countDown();
        }
        show.finish();
        assertThat(told).containsExactly("newer");
    }

    @Test
    void writesRunOneAfterTheOtherInOrder() throws Exception {
        Shown show = new Shown();
        List<String> order = new ArrayList<>();
        try (Work work = Work.beside(show)) {
            for (int i = 0; i < 100; i++) {
                String name = Integer.toString(i);
                work.write(progress -> order.add(name), new Ends<>(done -> {}, thrown -> {}));
            }
        }
        assertThat(order).hasSize(100).startsWith("0", "1", "2").endsWith("98", "99");
        show.finish();
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(10, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException stop) {
            throw new IllegalStateException(stop);
        }
    }

    /** Stands for the window's thread. */
    private static final class Shown implements Executor {
        private final ExecutorService thread = Executors.newSingleThreadExecutor();

        @Override
        public void execute(Runnable act) {
            thread.execute(act);
        }

        void finish() throws InterruptedException {
            thread.shutdown();
            assertThat(thread.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
        }
    }
}
