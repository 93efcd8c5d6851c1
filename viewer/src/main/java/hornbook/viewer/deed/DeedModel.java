package hornbook.viewer.deed;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.shared.store.Books;
import hornbook.shared.store.Change;
import hornbook.shared.store.Deed;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Work;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Knows what was done last and takes it back, without a widget. */
public final class DeedModel {
    private static final int LISTED = 12;

    private final Work work;
    private final Books books;
    private Consumer<DeedView> listener = view -> {};
    private DeedView view = DeedView.NOTHING;
    private boolean doneHere;

    public DeedModel(Work work, Books books) {
        this.work = work;
        this.books = books;
        books.onCommit(this::committed);
    }

    DeedView view() {
        return view;
    }

    void onChange(Consumer<DeedView> draw) {
        listener = draw;
        draw.accept(view);
    }

    private void committed(List<Change> changes) {
        long number = changes.getLast().deed();
        work.read(progress -> new Done(books.deed(number), books.deeds(LISTED)), ends(this::done));
    }

    private record Done(Optional<Deed> deed, List<Deed> earlier) {}

    private void done(Done done) {
        done.deed().ifPresent(deed -> {
            doneHere = true;
            show(new DeedView(deed, "Done: " + deed.title(), false, done.earlier()));
        });
    }

    /**
     * Takes back the last deed that stands. One of an earlier day at the bench is named first, and taken back when it is
     * asked for again: whoever presses once too often must not lose yesterday's work unseen.
     */
    public void takeBack() {
        work.read(progress -> books.lastStanding(), ends(this::takeBack));
    }

    private void takeBack(Optional<Deed> last) {
        if (last.isEmpty()) {
            show(view.saying("There is nothing to take back.", true));
        } else if (doneHere || last.get().equals(view.last())) {
            undo(last.get());
        } else {
            Deed deed = last.get();
            show(new DeedView(
                    deed,
                    "Done on " + deed.day() + ": " + deed.title() + ". Ctrl+Z once more takes it back.",
                    false,
                    view.earlier()));
        }
    }

    /** Takes back that deed, or says which later one stands on it. */
    void undo(Deed deed) {
        work.write(progress -> books.undo(deed.number()), ends(undone -> {}));
    }

    private <A> Ends<A> ends(Consumer<A> answered) {
        return new Ends<>(answered, this::failed);
    }

    private void failed(Throwable thrown) {
        boolean told = thrown instanceof BadInput || thrown instanceof ShopUnavailable;
        String words = String.valueOf(thrown.getMessage());
        show(view.saying(told ? words : "This is a fault of Hornbook's own: " + words, true));
    }

    private void show(DeedView now) {
        view = now;
        listener.accept(now);
    }
}
