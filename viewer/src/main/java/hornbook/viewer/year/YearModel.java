package hornbook.viewer.year;

import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.shared.year.Year;
import hornbook.shared.year.YearAnswer;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Progress;
import hornbook.viewer.work.Shown;
import hornbook.viewer.work.Work;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/** What the pane knows and does, without a widget: which year is shown, and its way onto paper and into a table. */
public final class YearModel {
    private final Work work;
    private final Supplier<Year> years;
    private final Function<Progress, HonestyAnswer> estimates;
    private final YearFiles files;
    private final BiFunction<String, String, Optional<Path>> ask;
    private final Latest asked;
    private final Latest writing;
    private final Shown<YearView> shown = new Shown<>(YearView.NOTHING, YearView::saying);

    /**
     * Over one shop.
     *
     * @param years asked each time, for the books go on
     * @param estimates how honest they were; it takes some seconds, and only what is written down needs it
     * @param ask for a file, given a name to start from and its ending; empty where the person thought better of it
     */
    public YearModel(
            Work work,
            Supplier<Year> years,
            Function<Progress, HonestyAnswer> estimates,
            YearFiles files,
            BiFunction<String, String, Optional<Path>> ask) {
        this.work = work;
        this.years = years;
        this.estimates = estimates;
        this.files = files;
        this.ask = ask;
        asked = work.latest();
        writing = work.latest();
    }

    YearView view() {
        return shown.now();
    }

    void onChange(Consumer<YearView> draw) {
        shown.onChange(draw);
    }

    /** Shows the year that was in view, at first the one that today is in. */
    public void ask() {
        YearAnswer before = view().books();
        ask(before == null ? Optional.empty() : Optional.of(before.year()));
    }

    /** Goes so many years on; not beyond the one that today is in. */
    void step(int by) {
        YearAnswer before = view().books();
        if (before != null && (by < 0 || !view().running())) {
            ask(Optional.of(before.year() + by));
        }
    }

    private void ask(Optional<Integer> year) {
        asked.ask(
                progress -> {
                    YearAnswer now = years.get().answer();
                    boolean running = year.isEmpty() || year.get() >= now.year();
                    return YearView.NOTHING.with(running ? now : years.get().answer(year.get()), running);
                },
                shown.ends(shown::show));
    }

    void pdf() {
        write("pdf", files::pdf);
    }

    void csv() {
        write("csv", files::csv);
    }

    private void write(String ending, YearFiles.Way way) {
        YearAnswer books = view().books();
        if (books == null || books.empty()) {
            shown.trouble("There is nothing to write down.");
            return;
        }
        ask.apply("year-" + books.year(), ending).ifPresent(file -> {
            shown.show(view().doing("Going through the estimates of the year\u2026"));
            writing.ask(
                    progress -> way.write(books, estimates.apply(progress).until(books.upTo()), file),
                    shown.ends(words -> shown.show(view().saying(words))));
        });
    }

    /** What a thing or task is called. */
    String title(String id) {
        return files.title(id);
    }

    /** Lets writing be, where it is under way. */
    public void stop() {
        if (!view().doing().isEmpty()) {
            writing.cancel();
            shown.show(view().saying("Stopped; nothing was written."));
        }
    }
}
