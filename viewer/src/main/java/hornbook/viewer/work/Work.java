package hornbook.viewer.work;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * Runs questions beside the window: reading on a small pool, writing on one thread, one write after the other, and the
 * answers on the thread that shows.
 */
public final class Work implements AutoCloseable {
    private static final int READERS = 2;
    private static final int SECONDS_TO_FINISH_READING = 2;
    private static final int SECONDS_TO_FINISH_WRITING = 30;

    private final Executor readers;
    private final Executor writer;
    private final Executor show;

    private Work(Executor readers, Executor writer, Executor show) {
        this.readers = readers;
        this.writer = writer;
        this.show = show;
    }

    /** Threads of its own; answers go to {@code show}. */
    public static Work beside(Executor show) {
        return new Work(
                Executors.newFixedThreadPool(READERS, named("reading", true)),
                // Not a daemon: a write that was begun is finished before the program ends.
                Executors.newSingleThreadExecutor(named("writing", false)),
                show);
    }

    /** Everything at once on the caller's thread, for tests. */
    public static Work atOnce() {
        return new Work(Runnable::run, Runnable::run, Runnable::run);
    }

    /** Asks something that changes nothing. */
    public <A> Running read(Function<Progress, A> question, Ends<A> ends) {
        return start(readers, question, ends);
    }

    /** Does something that changes the shop; such deeds run one after the other, in the order given. */
    public <A> Running write(Function<Progress, A> deed, Ends<A> ends) {
        return start(writer, deed, ends);
    }

    /** A place for questions of which only the newest matters. */
    public Latest latest() {
        return new Latest(this);
    }

    private <A> Running start(Executor on, Function<Progress, A> question, Ends<A> ends) {
        Running running = new Running(show, ends);
        on.execute(() -> running.run(question, ends));
        return running;
    }

    /** Takes no more work and waits for what is under way: long for writes, briefly for the rest. */
    @Override
    public void close() {
        finish(readers, SECONDS_TO_FINISH_READING);
        finish(writer, SECONDS_TO_FINISH_WRITING);
    }

    private static void finish(Executor threads, int seconds) {
        if (!(threads instanceof ExecutorService own)) {
            return;
        }
        own.shutdown();
        try {
            own.awaitTermination(seconds, TimeUnit.SECONDS);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    private static ThreadFactory named(String name, boolean daemon) {
        return Thread.ofPlatform().name(name + "-", 1).daemon(daemon).factory();
    }
}
