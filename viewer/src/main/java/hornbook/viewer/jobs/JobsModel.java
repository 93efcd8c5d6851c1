package hornbook.viewer.jobs;

import hornbook.catalogue.hornmap.Usualness;
import hornbook.shared.job.AfterCare;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.OnBench;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.clock.ClockModel;
import hornbook.viewer.pick.Pick;
import hornbook.viewer.widget.Words;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What the screen Jobs knows and does, without a widget. */
public final class JobsModel {
    private final Work work;
    private final JobsAsked asked;
    private final JobHands hands;
    private final ClockModel clock;
    private final Consumer<String> map;
    private final Choices choices;
    private final Latest benches;
    private final Latest pages;
    private final Latest kin;
    private final Latest searches;
    private Consumer<JobsView> listener = view -> {};
    private JobsView view = JobsView.NOTHING;
    private String subject = "";
    private String wanted = "";
    private @Nullable Path photo;

    /** @param map shows the map of a horn */
    public JobsModel(Work work, JobsAsked asked, JobHands hands, ClockModel clock, Consumer<String> map) {
        this.work = work;
        this.asked = asked;
        this.hands = hands;
        this.clock = clock;
        this.map = map;
        this.choices = new Choices(asked);
        this.benches = work.latest();
        this.pages = work.latest();
        this.kin = work.latest();
        this.searches = work.latest();
    }

    JobsView view() {
        return view;
    }

    String title(String id) {
        return asked.title(id);
    }

    Path photo(String file) {
        return asked.photo(file);
    }

    void onChange(Consumer<JobsView> draw) {
        listener = draw;
        draw.accept(view);
    }

    private record Bench(List<OnBench> jobs, List<AfterCare.Due> due) {}

    /** Asks again what is on the bench and how the job in view stands; at first the one whose clock runs is in view. */
    void refresh() {
        benches.ask(progress -> new Bench(asked.bench(), asked.due()), ends(bench -> {
            show(view.with(bench.jobs(), bench.due()));
            if (view.page() != null && view.page().card().id().equals(wanted)) {
                reload(wanted);
            } else if (wanted.isEmpty()) {
                first().ifPresent(on -> open(on.id()));
            }
        }));
    }

    private Optional<OnBench> first() {
        return view.bench().stream()
                .filter(on -> !on.standing().clocks().isEmpty())
                .findFirst()
                .or(() -> view.bench().stream().findFirst());
    }

    /** Brings a job into view. */
    public void open(String job) {
        wanted = job;
        pages.ask(progress -> asked.page(job), ends(page -> {
            show(page.map(view::showing).orElseGet(() -> view.troubled("There is no job " + job + " any more.")));
            page.ifPresent(this::askKin);
        }));
    }

    private void askKin(JobPage page) {
        kin.ask(progress -> asked.kin(page.card()), ends(jobs -> show(view.withKin(jobs))));
    }

    private void reload(String job) {
        pages.ask(progress -> asked.page(job), ends(page -> page.ifPresent(now -> show(view.showing(now)))));
    }

    /** Takes the so-many-th job of the bench into view, counted from 1. */
    void openAt(int place) {
        if (place >= 1 && place <= view.bench().size()) {
            open(view.bench().get(place - 1).id());
        }
    }

    /** Begins an act: asks what must be known, or does it at once. */
    void begin(Act act) {
        JobPage page = view.page();
        if (!act.fits(page)) {
            return;
        }
        if (page == null || act == Act.TAKE_IN || act == Act.PAST) {
            show(act == Act.TAKE_IN ? view.asking(act, Questions.takeIn()) : view.picking(act, Choices.past()));
            return;
        }
        switch (act) {
            case CLOCK -> clock(page);
            case MAP -> map.accept(page.card().horn());
            case FINDING -> choosing(act, () -> choices.findings(page.card()));
            case PART -> choosing(act, () -> choices.parts(page.card()));
            case QUIRK -> choosing(act, () -> choices.quirks(page.card()));
            case ESTIMATE -> estimate(page);
            case TEACH, HAND_BACK -> doing(() -> hands.onJob(act, page, new Answers(Map.of())));
            default -> Questions.before(act, page).ifPresent(ask -> show(view.asking(act, ask)));
        }
    }

    private void clock(JobPage page) {
        if (page.card().standing().clocks().isEmpty()) {
            clock.chooseTask(page.card().id());
        } else {
            clock.stop(page.card().id());
        }
    }

    private void choosing(Act act, Supplier<Pick> pick) {
        work.read(progress -> pick.get(), ends(now -> show(view.picking(act, now))));
    }

    /** A picture to keep; a word on it is asked for. */
    void photo(Path file) {
        photo = file;
        show(view.asking(Act.PHOTO, Questions.photo(String.valueOf(file.getFileName()))));
    }

    /** Letters typed into a choice that searches. */
    void typed(String text) {
        Pick pick = view.pick();
        Act act = view.act();
        if (pick == null || text.isBlank() || (act != Act.PART && act != Act.PAST)) {
            return;
        }
        searches.ask(
                progress -> act == Act.PART ? asked.lots(text) : asked.jobs(text),
                ends(hits -> show(view.picking(act, Choices.found(pick, hits)))));
    }

    /** One of the choice was taken. */
    void choose(String value) {
        JobPage page = view.page();
        Act act = view.act();
        if (act == Act.PAST) {
            show(view.answered());
            open(value);
        } else if (page != null && act != null) {
            chosen(act, page.card(), value);
        }
    }

    private void chosen(Act act, JobCard card, String value) {
        switch (act) {
            case FINDING -> askFor(card, value);
            case PART -> doing(() -> hands.part(card.id(), value, 1, ""));
            case QUIRK -> doing(() -> hands.met(card.id(), value));
            case ESTIMATE -> expect(value, 1);
            default -> {}
        }
    }

    private void askFor(JobCard card, String what) {
        subject = what;
        work.read(
                progress -> asked.usual(what, card.instrument(), "", "")
                        .map(usual -> Questions.reading(usual, asked.gauges(), choices.cups()))
                        .or(() -> Optional.ofNullable(asked.catalogue().traits().get(what))
                                .map(Questions::observation))
                        .orElseGet(() -> Questions.fault(asked.title(what), choices.cups())),
                ends(ask -> show(view.asking(Act.FINDING, ask))));
    }

    /** The question was answered. */
    void answer(Answers answers) {
        Act act = view.act();
        JobPage page = view.page();
        if (act == Act.TAKE_IN) {
            work.write(progress -> hands.takeIn(answers), ends(job -> {
                show(view.answered());
                open(job);
                refresh();
            }));
        } else if (act == Act.FINDING && page != null) {
            found(page.card(), answers);
        } else if (act == Act.PHOTO && page != null && photo != null) {
            Path file = photo;
            doing(() -> hands.photo(page.card(), file, answers.text("word")));
        } else if (act != null && page != null) {
            doing(() -> hands.onJob(act, page, answers));
        }
    }

    private void found(JobCard card, Answers answers) {
        String what = subject;
        String value = answers.text("value");
        work.write(
                progress -> {
                    Optional<Usualness> usual = asked.usual(what, card.instrument(), answers.text("where"), value);
                    if (usual.isPresent()) {
                        answers.needed("value", "as read");
                    }
                    hands.find(card.id(), what, usual.map(Usualness::unit).orElse(""), answers);
                    return usual.filter(Usualness::outside);
                },
                ends(outlier -> {
                    show(view.answered()
                            .remarking(outlier.map(u -> outside(value, u)).orElse(null)));
                    refresh();
                }));
    }

    private static String outside(String value, Usualness usual) {
        return value + " " + usual.unit() + " is outside the usual " + usual.usual() + ". "
                + Words.sentence(String.valueOf(usual.means())) + " It is written down as read.";
    }

    /** What is expected on the job; at first what such jobs usually have. */
    private void estimate(JobPage page) {
        if (view.expected() != null) {
            choosing(Act.ESTIMATE, () -> choices.tasks(page.card()));
            return;
        }
        work.read(
                progress -> asked.expected(page.card(), asked.usualWork(page.card())),
                ends(expected -> show(view.expecting(expected))));
    }

    /** So many more of a task are expected, or fewer. */
    void expect(String task, int by) {
        JobPage page = view.page();
        Expected before = view.expected();
        if (page != null && before != null) {
            work.read(
                    progress -> asked.expected(page.card(), before.changed(task, by)),
                    ends(expected -> show(view.expecting(expected))));
        }
    }

    /** Tells the owner so many minutes. */
    void quote(long minutes) {
        JobPage page = view.page();
        if (page != null) {
            doing(() -> hands.quote(page.card().id(), minutes));
        }
    }

    /** It is done soaking. */
    void ready(String timer) {
        doing(() -> hands.ready(timer));
    }

    private void doing(Runnable deed) {
        work.write(
                progress -> {
                    deed.run();
                    return true;
                },
                ends(done -> {
                    show(view.answered());
                    refresh();
                }));
    }

    /** Leaves the question or choice, then the remark; whether there was one. */
    boolean leave() {
        if (view.asks()) {
            show(view.answered());
            return true;
        }
        boolean said = view.remark() != null || view.trouble() != null || view.expected() != null;
        show(view.plain());
        return said;
    }

    private <A> Ends<A> ends(Consumer<A> answered) {
        return new Ends<>(answered, this::failed);
    }

    private void failed(Throwable thrown) {
        boolean told = thrown instanceof BadInput || thrown instanceof ShopUnavailable;
        String words = String.valueOf(thrown.getMessage());
        show(view.troubled(told ? words : "This is a fault of Hornbook's own: " + words));
    }

    private void show(JobsView now) {
        view = now;
        listener.accept(now);
    }
}
