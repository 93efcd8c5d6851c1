package hornbook.shared.job;

import hornbook.shared.job.JobCard.ConsentLine;
import hornbook.shared.job.JobCard.DownLine;
import hornbook.shared.job.JobCard.FindingLine;
import hornbook.shared.job.JobCard.PadLine;
import hornbook.shared.job.JobCard.PartLine;
import hornbook.shared.job.JobCard.PhotoLine;
import hornbook.shared.job.JobCard.TaskLine;
import hornbook.shared.shop.Consent;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.PadUsed;
import hornbook.shared.shop.PartUsed;
import hornbook.shared.shop.Photo;
import hornbook.shared.shop.TakenDown;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.shop.Went;
import hornbook.shared.store.Books;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Answers how a job stands or went, and what a horn has been through. */
public final class Jobs {
    private final Books books;

    public Jobs(Books books) {
        this.books = books;
    }

    /** The job of that number. */
    public Optional<JobCard> job(String id) {
        return books.find(Job.class, id).map(this::card);
    }

    /** The jobs that are not handed back: the promised first, those without a day last. */
    public List<OnBench> onBench() {
        Standings standings = new Standings(books);
        return Stream.of(JobStatus.OPEN, JobStatus.WAITING)
                .flatMap(status -> books.where(Job.class, "status", word(status)).stream())
                .sorted(Comparator.comparing(Job::promised, Comparator.nullsLast(Comparator.naturalOrder()))
                        .thenComparing(Job::id))
                .map(job -> onBench(job, standings.of(job.id())))
                .toList();
    }

    private OnBench onBench(Job job, Standing standing) {
        Horn horn = books.find(Horn.class, job.horn()).orElseThrow();
        List<TaskTime> times = books.where(TaskTime.class, "job", job.id());
        return new OnBench(
                job.id(),
                horn.id(),
                horn.model(),
                horn.instrument(),
                horn.serial(),
                horn.soldAs(),
                job.kind(),
                word(job.status()),
                job.complaint(),
                job.tookIn(),
                job.promised(),
                job.quotedMin(),
                times.stream().mapToInt(TaskTime::minutes).sum(),
                times.isEmpty() ? null : times.getLast().task(),
                standing);
    }

    /** The horn of that number. */
    public Optional<HornCard> horn(String id) {
        return books.find(Horn.class, id).map(this::card);
    }

    private JobCard card(Job job) {
        Horn horn = books.find(Horn.class, job.horn()).orElseThrow();
        List<TaskLine> tasks = tasks(job.id());
        return new JobCard(
                job.id(),
                horn.id(),
                horn.model(),
                horn.instrument(),
                horn.serial(),
                horn.soldAs(),
                job.kind(),
                word(job.status()),
                job.tookIn(),
                job.promised(),
                job.done(),
                job.complaint(),
                went(job.went()),
                job.wentNote(),
                job.quotedMin(),
                tasks.stream().mapToInt(TaskLine::minutes).sum(),
                job.quirksMet(),
                job.note(),
                new PlannedWork(books).of(job.id()),
                tasks,
                findings(job.id()),
                parts(job.id()),
                pads(job.id()),
                new Standings(books).of(job.id()),
                consents(job.id()),
                takenDown(job.id()),
                photos(job.id()));
    }

    private List<ConsentLine> consents(String job) {
        return books.where(Consent.class, "job", job).stream()
                .map(c -> new ConsentLine(c.day(), c.what(), c.saidBy(), c.note()))
                .toList();
    }

    private List<DownLine> takenDown(String job) {
        return books.where(TakenDown.class, "job", job).stream()
                .sorted(Comparator.comparingInt(TakenDown::step))
                .map(d -> new DownLine(d.step(), d.piece(), d.how(), d.reason()))
                .toList();
    }

    private List<PhotoLine> photos(String job) {
        return books.where(Photo.class, "job", job).stream()
                .map(p -> new PhotoLine(p.id(), p.sha() + "." + p.kept(), p.word()))
                .toList();
    }

    private List<TaskLine> tasks(String job) {
        Map<String, TaskLine> byTask = new LinkedHashMap<>();
        for (TaskTime time : books.where(TaskTime.class, "job", job)) {
            byTask.merge(
                    time.task() + "/" + time.who(),
                    new TaskLine(time.task(), time.count(), time.minutes(), time.who()),
                    (a, b) -> new TaskLine(a.task(), a.count(), a.minutes() + b.minutes(), a.who()));
        }
        return List.copyOf(byTask.values());
    }

    private List<FindingLine> findings(String job) {
        return books.where(Finding.class, "job", job).stream()
                .map(f -> new FindingLine(
                        f.date(), f.what(), f.where(), f.value(), f.unit(), f.asFoundOrLeft(), f.tool(), f.note()))
                .toList();
    }

    private List<PartLine> parts(String job) {
        return books.where(PartUsed.class, "job", job).stream()
                .map(p -> new PartLine(
                        p.lot(), books.find(Lot.class, p.lot()).map(Lot::title).orElse(p.lot()), p.qty(), p.whatFor()))
                .toList();
    }

    private List<PadLine> pads(String job) {
        return books.where(PadUsed.class, "job", job).stream()
                .map(p -> new PadLine(p.cup(), p.measuredMm(), p.sizeMm(), p.thicknessMm(), p.lot(), p.note()))
                .toList();
    }

    private HornCard card(Horn horn) {
        return new HornCard(
                horn.id(),
                horn.model(),
                horn.make(),
                horn.instrument(),
                horn.serial(),
                horn.soldAs(),
                horn.yearAbout(),
                horn.identifiedBy(),
                horn.sureness(),
                horn.firstSeen(),
                horn.note(),
                books.where(Job.class, "horn", horn.id()).stream()
                        .sorted(Comparator.comparing(Job::tookIn).reversed())
                        .map(job -> new HornCard.PastJob(
                                job.id(),
                                job.tookIn(),
                                job.kind(),
                                word(job.status()),
                                job.complaint(),
                                went(job.went())))
                        .toList());
    }

    private static @Nullable String went(@Nullable Went went) {
        return went == null ? null : word(went);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
