package hornbook.shared.job;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Consent;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.PadUsed;
import hornbook.shared.shop.RunningClock;
import hornbook.shared.shop.TakenDown;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.shop.Timer;
import hornbook.shared.shop.Went;
import hornbook.shared.shop.Whereabouts;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.List;

/** What is written down in the course of a job. Each call is one deed that can be undone. */
public final class JobBook {
    private final Books books;

    public JobBook(Books books) {
        this.books = books;
    }

    /** Opens a job, and a horn that was not here before. */
    public Deed takeIn(TakeIn in) {
        return books.write("take in: " + in.complaint(), w -> {
            String horn = in.horn() == null ? newHorn(w, in) : known(in.horn());
            w.put(new Job(
                    w.nextId(Job.class),
                    horn,
                    in.kind(),
                    books.today(),
                    in.promised(),
                    null,
                    JobStatus.OPEN,
                    in.complaint(),
                    List.of(),
                    null,
                    "",
                    in.quotedMin(),
                    null,
                    in.ownerCode(),
                    ""));
        });
    }

    private String newHorn(Writing w, TakeIn in) {
        String id = w.nextId(Horn.class);
        w.put(new Horn(
                id,
                "unlisted",
                null,
                in.instrument(),
                in.serial(),
                in.soldAs(),
                null,
                in.ownerCode(),
                books.today(),
                "none",
                "not placed",
                ""));
        return id;
    }

    private String known(String horn) {
        return books.find(Horn.class, horn)
                .map(Horn::id)
                .orElseThrow(() -> new BadInput("there is no horn " + horn + ": leave it out for a new one"));
    }

    /** Writes down what was seen or measured. */
    public Deed find(String job, Look look) {
        return books.write(look.title() + " on " + job, w -> {
            Job on = open(w, job);
            w.put(new Finding(
                    w.nextId(Finding.class),
                    job,
                    on.horn(),
                    books.today(),
                    look.what(),
                    look.where(),
                    look.value(),
                    look.unit(),
                    look.left() ? "left" : "found",
                    look.tool(),
                    look.note()));
        });
    }

    /** A pad goes into a cup, and out of its lot. */
    public Deed pad(String job, PadFitted pad) {
        return books.write("pad in " + pad.cup() + " of " + job, w -> {
            Job on = open(w, job);
            String line = pad.lot() == null ? null : takePad(w, job, pad.lot(), pad.cup());
            w.put(new PadUsed(
                    w.nextId(PadUsed.class),
                    job,
                    on.horn(),
                    pad.cup(),
                    pad.measured(),
                    pad.size(),
                    pad.thickness(),
                    pad.lot(),
                    line,
                    pad.note()));
        });
    }

    private String takePad(Writing w, String job, String lot, String cup) {
        String line = w.nextId(Movement.class);
        w.put(new Movement(line, books.today(), lot, MovementKind.USE, -1, job, null, null, null, null, cup));
        return line;
    }

    /** The owner's yes to what cannot be undone or leaves a mark. */
    public Deed consent(String job, String what, String saidBy) {
        return books.write("yes to " + what + " on " + job, w -> {
            open(w, job);
            w.put(new Consent(w.nextId(Consent.class), job, books.today(), what, saidBy, ""));
        });
    }

    /** Something soaks, dries or sets, and is ready after a while. */
    public Deed timer(String job, String what, Duration lasts) {
        return books.write(what + " on " + job, w -> {
            open(w, job);
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
            open(w, job);
            String id = w.where(Whereabouts.class, "job", job).stream()
                    .filter(at -> at.piece().equals(piece))
                    .map(Whereabouts::id)
                    .findFirst()
                    .orElseGet(() -> w.nextId(Whereabouts.class));
            w.put(new Whereabouts(id, job, piece, where, waitsFor, books.today()));
        });
    }

    /** The next step of taking down, as it went. */
    public Deed tookDown(String job, String piece, String how, String reason) {
        return books.write("took down " + piece + " of " + job, w -> {
            open(w, job);
            int step = w.where(TakenDown.class, "job", job).size() + 1;
            w.put(new TakenDown(w.nextId(TakenDown.class), job, step, piece, how, reason));
        });
    }

    /** Closes a job: how it went, in a grade and a sentence. Running clocks must be stopped first. */
    public Deed close(String job, Went went, String sentence) {
        return books.write("close " + job, w -> {
            Job on = open(w, job);
            if (!w.where(RunningClock.class, "job", job).isEmpty()) {
                throw new BadInput("a clock runs on " + job + ": stop it first with “hornbook job stop " + job + "”");
            }
            int minutes = w.where(TaskTime.class, "job", job).stream()
                    .mapToInt(TaskTime::minutes)
                    .sum();
            w.put(new Job(
                    on.id(),
                    on.horn(),
                    on.kind(),
                    on.tookIn(),
                    on.promised(),
                    books.today(),
                    JobStatus.DONE,
                    on.complaint(),
                    on.quirksMet(),
                    went,
                    sentence,
                    on.quotedMin(),
                    minutes,
                    on.ownerCode(),
                    on.note()));
        });
    }

    /** Quotes, promises, waits, goes on or is declined; what is null stays. */
    public Deed change(String job, JobChange change) {
        return books.write(change.title() + " " + job, w -> w.put(change.made(open(w, job))));
    }

    /** A quirk was met on this job: the next brief knows. */
    public Deed met(String job, String quirk) {
        return books.write(quirk + " met on " + job, w -> w.put(withQuirk(open(w, job), quirk)));
    }

    private static Job withQuirk(Job on, String quirk) {
        var met = new LinkedHashSet<>(on.quirksMet());
        met.add(quirk);
        return new Job(
                on.id(),
                on.horn(),
                on.kind(),
                on.tookIn(),
                on.promised(),
                on.done(),
                on.status(),
                on.complaint(),
                List.copyOf(met),
                on.went(),
                on.wentNote(),
                on.quotedMin(),
                on.minutesTotal(),
                on.ownerCode(),
                on.note());
    }

    static Job open(Writing w, String job) {
        return w.find(Job.class, job)
                .orElseThrow(() -> new BadInput("there is no job " + job + ": look it up with “hornbook find”"));
    }
}
