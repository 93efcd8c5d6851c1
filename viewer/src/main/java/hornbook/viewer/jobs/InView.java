package hornbook.viewer.jobs;

import hornbook.shared.job.OnBench;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Shown;
import hornbook.viewer.work.Work;
import java.util.Optional;
import java.util.function.Consumer;

/** The horns on the bench, and the job that is in view. */
public final class InView {
    private final Shown<JobsView> shown;
    private final JobSheets sheets;
    private final PastWork past;
    private final Consumer<JobPage> again;
    private final Latest benches;
    private final Latest pages;
    private final Latest kin;
    private String wanted = "";

    /** @param again is told of the job in view when it was asked for again */
    InView(Work work, Shown<JobsView> shown, JobSheets sheets, PastWork past, Consumer<JobPage> again) {
        this.again = again;
        this.shown = shown;
        this.sheets = sheets;
        this.past = past;
        this.benches = work.latest();
        this.pages = work.latest();
        this.kin = work.latest();
    }

    /** Asks again what is on the bench and how the job in view stands; at first the one whose clock runs is in view. */
    void refresh() {
        benches.ask(progress -> sheets.bench(), shown.ends(bench -> {
            shown.show(shown.now().with(bench.jobs(), bench.due()));
            JobPage page = shown.now().page();
            if (page != null && page.card().id().equals(wanted)) {
                reload(wanted);
            } else if (wanted.isEmpty()) {
                first().ifPresent(on -> open(on.id()));
            }
        }));
    }

    private Optional<OnBench> first() {
        return shown.now().bench().stream()
                .filter(on -> !on.standing().clocks().isEmpty())
                .findFirst()
                .or(() -> shown.now().bench().stream().findFirst());
    }

    /** Brings a job into view. */
    public void open(String job) {
        open(job, page -> {});
    }

    /** @param then is told once it is there */
    void open(String job, Consumer<JobPage> then) {
        wanted = job;
        pages.ask(
                progress -> sheets.page(job),
                shown.ends(page -> page.ifPresentOrElse(
                        now -> came(now, then), () -> shown.trouble("There is no job " + job + " any more."))));
    }

    private void came(JobPage page, Consumer<JobPage> then) {
        shown.show(shown.now().showing(page));
        then.accept(page);
        kin.ask(
                progress -> past.kin(page.card()),
                shown.ends(jobs -> shown.show(shown.now().withKin(jobs))));
    }

    private void reload(String job) {
        pages.ask(
                progress -> sheets.page(job),
                shown.ends(page -> page.ifPresent(now -> {
                    shown.show(shown.now().showing(now));
                    again.accept(now);
                })));
    }

    /** Takes the so-many-th job of the bench into view, counted from 1. */
    void openAt(int place) {
        if (place >= 1 && place <= shown.now().bench().size()) {
            open(shown.now().bench().get(place - 1).id());
        }
    }
}
