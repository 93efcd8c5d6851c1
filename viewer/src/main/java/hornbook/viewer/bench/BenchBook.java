package hornbook.viewer.bench;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.identify.Confirm;
import hornbook.catalogue.identify.Confirmation;
import hornbook.catalogue.identify.MadeOut;
import hornbook.catalogue.identify.NewModel;
import hornbook.catalogue.identify.Seen;
import hornbook.shared.job.Intake;
import hornbook.shared.job.JobBook;
import hornbook.shared.job.TakeIn;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.util.Comparator;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What the bench writes into the books; each call but the last one or two deeds that can be undone. */
public final class BenchBook {
    private static final String MEMBER = "family-member";
    private static final String UNLISTED = "unlisted";

    private final Books books;
    private final Supplier<Confirm> confirm;
    private final Supplier<Catalogue> catalogue;
    private final Intake intake;
    private final JobBook jobs;

    public BenchBook(
            Books books, Supplier<Confirm> confirm, Supplier<Catalogue> catalogue, Intake intake, JobBook jobs) {
        this.books = books;
        this.confirm = confirm;
        this.catalogue = catalogue;
        this.intake = intake;
        this.jobs = jobs;
    }

    /**
     * What came of it.
     *
     * @param horn as it now lies on the bench
     * @param said in a sentence
     * @param deed that can be taken back
     */
    record Done(InHand horn, String said, long deed) {}

    /** Why a horn that is not in the books is here. */
    record Reason(String kind, String complaint) {}

    /** Takes a horn in that is not in the books; one that is stays as it is. */
    InHand takeIn(InHand horn, Reason reason) {
        if (horn.horn() != null) {
            return horn;
        }
        Deed deed = intake.takeIn(new TakeIn(
                null,
                instrument(horn),
                horn.serial(),
                seller(horn.mark()),
                reason.kind(),
                reason.complaint(),
                null,
                null,
                null,
                null,
                ""));
        return horn.takenIn(books.touched(deed, Horn.class).getFirst(), intake.job(deed));
    }

    /** The horn, which is in the books, is this. */
    Done confirm(InHand horn, String model, Confirmation by) {
        Horn now = confirm.get().is(made(horn, model, by));
        String title = model.equals(UNLISTED)
                ? "none of those listed"
                : Objects.requireNonNull(catalogue.get().models().get(model)).title();
        return done(horn.called(title), now.id() + " is " + title + ", " + now.sureness() + ".");
    }

    /** The horn, which is in the books, is the first of a model that no entry describes yet. */
    Done entry(InHand horn, NewModel wanted) {
        InHand here = horn.job() != null
                ? horn
                : horn.takenIn(Objects.requireNonNull(horn.horn()), newest(Objects.requireNonNull(horn.horn())));
        Model made = confirm.get().entryFrom(made(here, UNLISTED, Confirmation.TAKEN_APART), wanted);
        return done(horn.called(made.title()), made.title() + " is now a model of its own: look it over in Knowledge.");
    }

    /** The owner agreed to looks that leave a mark. */
    Done agreed(InHand horn) {
        Deed deed = jobs.consent(Objects.requireNonNull(horn.job()), "looks that leave a mark", "owner");
        return new Done(horn.agreed(), "The owner's yes is written down on " + horn.job() + ".", deed.number());
    }

    /** Takes a deed back. */
    String undo(long deed) {
        return "Taken back: " + books.undo(deed).title() + ".";
    }

    private @Nullable String newest(String horn) {
        return books.where(Job.class, "horn", horn).stream()
                .max(Comparator.comparing(Job::tookIn))
                .map(Job::id)
                .orElse(null);
    }

    private static String instrument(InHand horn) {
        return horn.looks(MEMBER).stream()
                .filter(s -> s instanceof Seen.OneOf one && one.values().size() == 1)
                .map(Seen::value)
                .findFirst()
                .orElse("other");
    }

    private @Nullable String seller(String mark) {
        return catalogue.get().sellers().values().stream()
                .filter(s -> s.title().equalsIgnoreCase(mark.strip()))
                .map(s -> s.id())
                .findFirst()
                .orElse(null);
    }

    private static MadeOut made(InHand horn, String model, Confirmation by) {
        return new MadeOut(Objects.requireNonNull(horn.horn()), model, by, horn.job(), horn.looks(), horn.serial());
    }

    /** The books are written in one deed after the other, so that the last one is this one. */
    private Done done(InHand horn, String said) {
        return new Done(horn, said, books.deeds(1).getFirst().number());
    }
}
