package hornbook.shared.job;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Timer;
import hornbook.shared.shop.Whereabouts;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.time.Duration;
import java.util.function.Predicate;

/** What a job stands waiting for: what soaks or dries, where its pieces are. Each call is one deed. */
public final class StandingBook {
    /** So begins a place that is not in the shop: with the plater. */
    private static final String ELSEWHERE = "with ";

    private static final Duration LONGEST = Duration.ofDays(366);

    private final Books books;
    private final Predicate<String> known;

    /** @param known whether a person means a drawer or place of the shop by that */
    public StandingBook(Books books, Predicate<String> known) {
        this.books = books;
        this.known = known;
    }

    /** Something soaks, dries or sets, and is ready after a while. */
    public Deed timer(String job, String what, Duration lasts) {
        JobBook.said(what, "what soaks, dries or sets");
        if (lasts.compareTo(LONGEST) > 0) {
            throw new BadInput(lasts.toMinutes() + " minutes are more than a year: look at the number");
        }
        return books.write(what + " on " + job, w -> {
            JobBook.open(w, job);
            var now = books.now();
            w.put(new Timer(w.nextId(Timer.class), job, what, now, now.plus(lasts)));
        });
    }

    /** It is done soaking, drying or setting, or no longer wanted. */
    public Deed timerDone(String timer) {
        String what = books.find(Timer.class, timer).map(Timer::what).orElse("timer " + timer);
        return books.write(what + " is done", w -> w.retire(Timer.class, timer));
    }

    /**
     * Where the horn or a piece of it is, and what it waits for; a new word replaces the old one.
     *
     * @param where a drawer or place of the shop, or {@code with …} where somebody else has it
     * @throws BadInput where there is no such place
     */
    public Deed whereabouts(String job, String piece, String where, String waitsFor) {
        JobBook.said(piece, "the piece");
        if (!where.startsWith(ELSEWHERE) && !known.test(where)) {
            throw new BadInput("there is no drawer or place “" + where + "”: “hornbook place” lists and sets up places;"
                    + " where somebody else has it, write “with …”");
        }
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
