package hornbook.shared.job;

import hornbook.shared.shop.Timer;
import hornbook.shared.shop.Whereabouts;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.time.Duration;

/** What a job stands waiting for: what soaks or dries, where its pieces are. Each call is one deed. */
public final class StandingBook {
    private final Books books;

    public StandingBook(Books books) {
        this.books = books;
    }

    /** Something soaks, dries or sets, and is ready after a while. */
    public Deed timer(String job, String what, Duration lasts) {
        return books.write(what + " on " + job, w -> {
            JobBook.open(w, job);
            var now = books.now();
            w.put(new Timer(w.nextId(Timer.class), job, what, now, now.plus(lasts)));
        });
    }

    /** It is done soaking, drying or setting, or no longer wanted. */
    public Deed timerDone(String timer) {
        return books.write("timer " + timer + " is done", w -> w.retire(Timer.class, timer));
    }

    /** Where the horn or a piece of it is, and what it waits for; a new word replaces the old one. */
    public Deed whereabouts(String job, String piece, String where, String waitsFor) {
        return books.write(piece + " of " + job + ": " + where, w -> {
            JobBook.open(w, job);
            String id = w.where(Whereabouts.class, "job", job).stream()
                    .filter(at -> at.piece().equals(piece))
                    .map(Whereabouts::id)
                    .findFirst()
                    .orElseGet(() -> w.nextId(Whereabouts.class));
            w.put(new Whereabouts(id, job, piece, where, waitsFor, books.today()));
        });
    }
}
