package hornbook.shared.job;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Consent;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.PadUsed;
import hornbook.shared.shop.PersonCode;
import hornbook.shared.shop.Plainly;
import hornbook.shared.shop.TakenDown;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;

/** What is written down in the course of a job. Each call is one deed that can be undone. */
public final class JobBook {
    /** Past the widest cup of a bass (from memory). */
    private static final BigDecimal LARGEST_PAD = BigDecimal.valueOf(120);

    private static final BigDecimal THICKEST_PAD = BigDecimal.valueOf(15);

    private final Books books;

    public JobBook(Books books) {
        this.books = books;
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
        return books.write("pad in " + Plainly.said(pad.cup()) + " of " + job, w -> {
            Job on = open(w, job);
            checked(w, pad);
            if (!pad.again()) {
                refuseSecond(w, job, pad.cup());
            }
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

    private static void refuseSecond(Writing w, String job, String cup) {
        w.where(PadUsed.class, "job", job).stream()
                .filter(there -> there.cup().equals(cup))
                .findFirst()
                .ifPresent(there -> {
                    throw new BadInput(cup + " of " + job + " has a pad of "
                            + there.sizeMm().toPlainString() + " mm already"
                            + (there.lot() == null ? "" : ", out of " + there.lot())
                            + ": say --again where another went in, or “hornbook undo” the first");
                });
    }

    private static void checked(Writing w, PadFitted pad) {
        if (pad.size().signum() <= 0 || pad.size().compareTo(LARGEST_PAD) > 0) {
            throw new BadInput(pad.size().toPlainString() + " mm is no pad: write its size as 31 or 31.5");
        }
        BigDecimal thickness = pad.thickness();
        if (thickness != null && (thickness.signum() <= 0 || thickness.compareTo(THICKEST_PAD) > 0)) {
            throw new BadInput(thickness.toPlainString() + " mm is no thickness of a pad: write it as 4 or 3.8");
        }
        if (pad.lot() == null) {
            return;
        }
        Lot lot = w.find(Lot.class, pad.lot())
                .orElseThrow(
                        () -> new BadInput("there is no lot " + pad.lot() + ": look it up with “hornbook find pad”"));
        if (!lot.item().isBlank() && !lot.item().contains("-pad-")) {
            throw new BadInput(lot.id() + " is " + lot.title() + ", which is no pad: name the lot the pad came out of");
        }
    }

    private String takePad(Writing w, String job, String lot, String cup) {
        String line = w.nextId(Movement.class);
        w.put(new Movement(line, books.today(), lot, MovementKind.USE, -1, job, null, null, null, null, cup));
        return line;
    }

    /** The owner's yes to what cannot be undone or leaves a mark. */
    public Deed consent(String job, String what, String saidBy) {
        said(what, "what the owner agreed to");
        String by = PersonCode.read(saidBy);
        return books.write("yes to " + what + " on " + job, w -> {
            open(w, job);
            w.put(new Consent(w.nextId(Consent.class), job, books.today(), what, by, ""));
        });
    }

    /** The next step of taking down, as it went. */
    public Deed tookDown(String job, String piece, String how, String reason) {
        said(piece, "what was taken down");
        return books.write("took down " + piece + " of " + job, w -> {
            open(w, job);
            int step = w.where(TakenDown.class, "job", job).size() + 1;
            w.put(new TakenDown(w.nextId(TakenDown.class), job, step, piece, how, reason));
        });
    }

    /** Quotes, promises, waits, goes on or is declined; what is null stays. */
    public Deed change(String job, JobChange change) {
        TakeIn.promisable(change.promised(), books.today());
        return books.write(change.title() + " " + job, w -> {
            Job was = open(w, job);
            Job now = change.made(was);
            if (now.equals(was)) {
                throw new BadInput("nothing about " + job + " would be otherwise: say what is agreed, as a day"
                        + " promised or minutes quoted");
            }
            w.put(now);
        });
    }

    /** A quirk was met on this job: the next brief knows. */
    public Deed met(String job, String quirk) {
        return books.write(Plainly.said(quirk) + " met on " + job, w -> {
            Job on = open(w, job);
            var met = new LinkedHashSet<>(on.quirksMet());
            met.add(quirk);
            w.put(on.meeting(List.copyOf(met)));
        });
    }

    /** @throws BadInput where nothing is said */
    static void said(String words, String what) {
        if (words.isBlank()) {
            throw new BadInput(what + " is empty: write it down in a few words");
        }
    }

    static Job open(Writing w, String job) {
        return w.find(Job.class, job)
                .orElseThrow(() -> new BadInput("there is no job " + job + ": look it up with “hornbook find”"));
    }
}
