package hornbook.viewer.jobs;

import hornbook.catalogue.called.JobWords;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.pick.Pick;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Shown;
import hornbook.viewer.work.Work;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What the screen Jobs knows and does, without a widget: goes with a person through each act, step by step. */
public final class JobsModel {
    private final Shown<JobsView> shown = new Shown<>(JobsView.NOTHING, JobsView::troubled);
    private final Map<Act, Begin> begun = new EnumMap<>(Act.class);
    private final Work work;
    private final JobSheets sheets;
    private final InView inView;
    private final Expecting expected;
    private final Waiting waiting;
    private final Estimating estimating;
    private final PhotosTaken photos;
    private final Latest searches;
    private @Nullable Step step;

    /**
     * Over one shop.
     *
     * @param acts that need nothing of the screen
     */
    public JobsModel(
            Work work,
            JobSheets sheets,
            PastWork past,
            Estimating estimating,
            Waiting waiting,
            PhotosTaken photos,
            List<Acts> acts) {
        this.work = work;
        this.sheets = sheets;
        this.expected = new Expecting(work, shown, estimating);
        this.inView = new InView(work, shown, sheets, past, expected::follow);
        this.estimating = estimating;
        this.waiting = waiting;
        this.photos = photos;
        this.searches = work.latest();
        acts.forEach(some -> begun.putAll(some.begun()));
        List.of(past, estimating, waiting).forEach(some -> begun.putAll(some.begun()));
    }

    JobsView view() {
        return shown.now();
    }

    void onChange(Consumer<JobsView> draw) {
        shown.onChange(draw);
    }

    /** The bench, and the job in view. */
    public InView inView() {
        return inView;
    }

    /** The work expected on the job in view. */
    Expecting expected() {
        return expected;
    }

    /** Brings a job into view and plans these tasks on it, beside what is planned already. */
    public void plan(String job, List<String> tasks) {
        inView.open(job, page -> expected.and(page, tasks));
    }

    String title(String id) {
        return sheets.title(id);
    }

    /** The lines of a job in words. */
    JobWords words() {
        return sheets.words();
    }

    /** Begins an act: asks what must be known, or does it at once. */
    void begin(Act act) {
        Begin how = begun.get(act);
        if (how != null && act.fits(view().page())) {
            go(act, how.on(view()));
        }
    }

    /** A picture to keep; a word on it is asked for. */
    void photo(Path file) {
        JobPage page = view().page();
        if (page != null) {
            go(Act.PHOTO, photos.keep(page.card(), file));
        }
    }

    /** Tells the owner of the job in view so many minutes. */
    void quote(long minutes) {
        JobPage page = view().page();
        if (page != null) {
            go(Act.ESTIMATE, estimating.quote(page.card().id(), minutes));
        }
    }

    /** Prints beside the window, and says where it is. */
    void print(Supplier<Printed> sheet) {
        work.read(
                progress -> sheet.get(),
                shown.ends(printed -> remark("Printed: " + printed.file() + ", " + printed.pages()
                        + (printed.pages() == 1 ? " page." : " pages."))));
    }

    /** It is done soaking. */
    void ready(String timer) {
        go(Act.TIMER, waiting.ready(timer));
    }

    private void go(Act act, Step next) {
        step = next;
        switch (next) {
            case Step.Reads reads -> {
                shown.show(view().beginning(act));
                work.read(progress -> reads.next().get(), shown.ends(now -> came(act, reads, now)));
            }
            case Step.Asks asks -> shown.show(view().asking(act, asks.ask()));
            case Step.Picks picks -> shown.show(view().picking(act, picks.pick()));
            case Step.Does does -> write(does.deed());
            case Step.Goes goes -> {
                shown.show(view().answered());
                goes.on().accept(this);
            }
        }
    }

    /** What was left meanwhile does not come back. */
    private void came(Act act, Step.Reads asked, Step now) {
        if (asked.equals(step)) {
            go(act, now);
        }
    }

    private void write(Supplier<Consumer<JobsModel>> deed) {
        work.write(progress -> deed.get(), shown.ends(then -> {
            shown.show(view().answered());
            inView.refresh();
            then.accept(this);
        }));
    }

    /** Letters typed into a choice that searches. */
    void typed(String text) {
        if (!(step instanceof Step.Picks(Pick pick, var _, var search)) || search == null || text.isBlank()) {
            return;
        }
        searches.ask(
                progress -> search.apply(text), shown.ends(found -> shown.show(view().finding(pick.found(found)))));
    }

    /** One of the choice was taken. */
    void choose(String value) {
        Act act = view().act();
        if (act != null && step instanceof Step.Picks picks) {
            Step next = picks.taken().apply(value);
            if (next instanceof Step.Does does) {
                write(does.deed());
            } else {
                go(act, next);
            }
        }
    }

    /** The question was answered. */
    void answer(Answers answers) {
        if (step instanceof Step.Asks asks) {
            write(() -> asks.deed().apply(answers));
        }
    }

    /** Something to heed, though it was done as told. */
    void remark(String words) {
        shown.show(view().remarking(words));
    }

    /** Leaves the question or choice, then the remark; whether there was one. */
    boolean leave() {
        step = null;
        if (view().asks()) {
            shown.show(view().answered());
            return true;
        }
        boolean said = view().remark() != null || view().trouble() != null || view().expected() != null;
        shown.show(view().plain());
        return said;
    }
}
