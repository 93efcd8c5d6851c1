package hornbook.shared.job;

import hornbook.shared.shop.RunningClock;
import hornbook.shared.shop.Timer;
import hornbook.shared.shop.Whereabouts;
import hornbook.shared.store.Books;
import java.time.LocalDateTime;
import java.util.Comparator;

/** Reads off the books how jobs stand at one moment. */
final class Standings {
    private final Books books;
    private final LocalDateTime now;

    Standings(Books books) {
        this.books = books;
        this.now = books.now();
    }

    Standing of(String job) {
        return new Standing(
                now,
                books.where(RunningClock.class, "job", job).stream()
                        .map(c -> new Standing.Clock(
                                c.task(), c.count(), c.since(), c.who(), Clocks.forgotten(c.since(), now)))
                        .toList(),
                books.where(Whereabouts.class, "job", job).stream()
                        .map(p -> new Standing.Piece(p.piece(), p.where(), p.waitsFor(), p.since()))
                        .toList(),
                books.where(Timer.class, "job", job).stream()
                        .map(t -> new Standing.Soaking(t.id(), t.what(), t.since(), t.ready()))
                        .sorted(Comparator.comparing(Standing.Soaking::ready))
                        .toList());
    }
}
