package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** One thing done to the shop: opens it, does it, and shows what that left behind. */
abstract class OneDeed implements Callable<Integer> {
    final Frame frame;

    OneDeed(Frame frame) {
        this.frame = frame;
    }

    /** What a deed left behind: the answer, and how it is said. */
    record Left(Object answer, Consumer<PrintWriter> text) {}

    abstract Deed done(Workshop workshop);

    abstract Left left(Workshop workshop, Deed done);

    @Override
    public Integer call() {
        return frame.writing(workshop -> {
            Deed done = done(workshop);
            Left left = left(workshop, done);
            return frame.answer(left.answer(), out -> {
                left.text().accept(out);
                line(out, done);
            });
        });
    }

    /** The deed, and how it is taken back. */
    static void line(PrintWriter out, Deed done) {
        out.println("deed " + done.number() + ": " + done.title() + " (“hornbook undo” takes it back)");
    }
}
