package hornbook.viewer.bench;

import hornbook.catalogue.identify.Confirmation;
import hornbook.catalogue.identify.NewModel;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.viewer.bench.BenchBook.Done;
import hornbook.viewer.bench.BenchBook.Reason;
import hornbook.viewer.work.Work;
import java.nio.file.Path;
import java.util.function.Function;
import java.util.function.Supplier;

/** What is written down of the horn in hand, or printed, and taken back. */
final class BenchDeeds {
    private final BenchModel model;
    private final Work work;
    private final Bench bench;
    private final BenchBook book;

    BenchDeeds(BenchModel model, Work work, Bench bench, BenchBook book) {
        this.model = model;
        this.work = work;
        this.bench = bench;
        this.book = book;
    }

    /** It is this. One that is not in the books is taken in first, for that reason. */
    void confirm(String model, Confirmation by, Reason reason) {
        known(reason, horn -> book.confirm(horn, model, by));
    }

    /** It is the first of a new model. */
    void entry(NewModel wanted, Reason reason) {
        known(reason, horn -> book.entry(horn, wanted));
    }

    private void known(Reason reason, Function<InHand, Done> deed) {
        InHand horn = model.view().horn();
        work.write(progress -> book.takeIn(horn, reason), model.ends(here -> {
            model.show(model.view().with(here));
            write(() -> deed.apply(here));
        }));
    }

    /** Prints the brief that is shown. */
    void print(Path file) {
        BriefAnswer brief = model.view().brief();
        if (brief != null) {
            InHand horn = model.view().horn();
            work.read(
                    progress -> bench.print(horn, brief, file),
                    model.ends(printed -> model.show(model.view().saying(printed, null))));
        }
    }

    /** The owner said yes to looks that leave a mark. */
    void agreed() {
        InHand horn = model.view().horn();
        write(() -> book.agreed(horn));
    }

    private void write(Supplier<Done> deed) {
        work.write(progress -> deed.get(), model.ends(done -> {
            model.show(model.view()
                    .with(done.horn())
                    .with(new BenchView.Side.Look())
                    .saying(done.said(), done.deed()));
            model.ask();
        }));
    }

    /** Takes the deed just done back. */
    void undo() {
        Long deed = model.view().undo();
        if (deed != null) {
            work.write(progress -> book.undo(deed), model.ends(said -> {
                model.show(model.view().saying(said, null));
                model.ask();
            }));
        }
    }
}
