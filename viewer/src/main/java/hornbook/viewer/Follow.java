package hornbook.viewer;

import hornbook.shared.store.Change;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.util.List;
import java.util.stream.Collectors;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.util.Duration;

/** Follows a shop in which another process writes: looks every other second for new lines in its change feed. */
final class Follow implements AutoCloseable {
    private static final Duration EVERY = Duration.seconds(2);

    private final Workshop workshop;
    private final Shell shell;
    private final Latest latest;
    private final Timeline clock;

    private long seen;

    Follow(Workshop workshop, Work work, Shell shell) {
        this.workshop = workshop;
        this.shell = shell;
        this.latest = work.latest();
        this.seen = workshop.books().feedEnd();
        this.clock = new Timeline(new KeyFrame(EVERY, tick -> look()));
        clock.setCycleCount(Timeline.INDEFINITE);
        if (!workshop.books().writable()) {
            clock.play();
        }
    }

    private void look() {
        long after = seen;
        latest.ask(progress -> workshop.books().feedAfter(after), new Ends<>(this::tell, thrown -> clock.stop()));
    }

    private void tell(List<Change> changes) {
        if (!changes.isEmpty()) {
            seen = changes.getLast().seq();
            shell.changed(changes.stream().map(Change::kind).collect(Collectors.toUnmodifiableSet()));
        }
    }

    @Override
    public void close() {
        clock.stop();
        latest.cancel();
    }
}
