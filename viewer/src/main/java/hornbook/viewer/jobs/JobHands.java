package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Seller;
import hornbook.shared.job.Ended;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.JobChange;
import hornbook.shared.job.Look;
import hornbook.shared.job.Standing;
import hornbook.shared.job.TakeIn;
import hornbook.shared.photo.Photos;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.Went;
import hornbook.shared.stock.Taking;
import hornbook.shared.store.Deed;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Does what was asked for; each call is one deed, save where closing also hands back and teaches. */
public final class JobHands {
    private final Workshop shop;

    public JobHands(Workshop shop) {
        this.shop = shop;
    }

    /** Takes a horn in; gives the number of its job. */
    String takeIn(Answers answers) {
        Deed deed = shop.intake()
                .takeIn(new TakeIn(
                        orNull(answers.text("horn")),
                        answers.text("instrument"),
                        answers.text("serial"),
                        orNull(seller(answers.text("mark"))),
                        answers.text("kind"),
                        answers.needed("complaint", "what is wrong"),
                        day(answers.text("promised")),
                        minutes(answers, "quoted"),
                        orNull(answers.text("owner"))));
        return shop.books().touched(deed, Job.class).getFirst();
    }

    /** A seller known by that name, else the name as it is. */
    private String seller(String name) {
        return shop.catalogue().sellers().values().stream()
                .filter(seller -> seller.title().equalsIgnoreCase(name))
                .map(Seller::id)
                .findFirst()
                .orElse(name);
    }

    /** @throws BadInput where the answers cannot be used or the books refuse */
    void onJob(Act act, JobPage page, Answers answers) {
        String job = page.card().id();
        switch (act) {
            case DOWN ->
                shop.jobBook()
                        .tookDown(
                                job,
                                answers.needed("piece", "what came off"),
                                answers.text("how"),
                                answers.text("why"));
            case TIMER -> timer(job, answers);
            case WHERE ->
                shop.standingBook()
                        .whereabouts(
                                job,
                                answers.needed("piece", "the piece"),
                                answers.needed("where", "where it is"),
                                answers.text("waits"));
            case YES ->
                shop.jobBook().consent(job, answers.needed("what", "to what"), answers.needed("by", "who said so"));
            case QUOTE -> agree(page.card(), answers);
            case CLOSE -> close(page, answers);
            case FOLLOW_UP -> shop.afterCare().followUp(job, answers.text("found"), answers.text("words"));
            case TEACH -> shop.lessons().teach(job);
            case HAND_BACK -> shop.afterCare().handBack(job);
            default -> throw new IllegalArgumentException(act + " is not done so");
        }
    }

    private void timer(String job, Answers answers) {
        int minutes = answers.whole("minutes", "for how many minutes");
        if (minutes <= 0) {
            throw new BadInput("for how many minutes: name one or more");
        }
        shop.standingBook().timer(job, answers.needed("what", "what"), Duration.ofMinutes(minutes));
    }

    private void agree(JobCard card, Answers answers) {
        JobStatus status = JobStatus.valueOf(answers.text("status").toUpperCase(Locale.ROOT));
        shop.jobBook()
                .change(
                        card.id(),
                        new JobChange(
                                status,
                                day(answers.text("promised")),
                                minutes(answers, "quoted"),
                                answers.text("note")));
    }

    private void close(JobPage page, Answers answers) {
        String job = page.card().id();
        stopClocks(page.card());
        shop.closing()
                .close(
                        job,
                        new Ended(
                                Went.valueOf(answers.text("grade").toUpperCase(Locale.ROOT)),
                                answers.text("sentence"),
                                false));
        if (answers.text("teach").equals("yes")) {
            shop.lessons().teach(job);
        }
        if (answers.text("back").equals("goes")) {
            shop.afterCare().handBack(job);
        }
    }

    /** Who closes a job has stopped working on it; what was forgotten is asked about first. */
    private void stopClocks(JobCard card) {
        card.standing().clocks().stream()
                .filter(Standing.Clock::forgotten)
                .findFirst()
                .ifPresent(clock -> {
                    throw new BadInput("a clock has run on " + card.id() + " since " + clock.since()
                            + ": stop it first (Ctrl+J) and say how long it really took");
                });
        card.standing().clocks().forEach(clock -> shop.clocks().stop(card.id(), clock.who(), null));
    }

    void quote(String job, long minutes) {
        shop.jobBook().change(job, new JobChange(null, null, Math.toIntExact(minutes), null));
    }

    void find(String job, String what, String unit, Answers answers) {
        String value = answers.text("value");
        shop.jobBook()
                .find(
                        job,
                        new Look(
                                what,
                                answers.text("where"),
                                value.isEmpty() ? "found" : value.replaceFirst("^(\\d+),(\\d+)$", "$1.$2"),
                                value.isEmpty() ? "" : unit,
                                answers.text("left").equals("left"),
                                orNull(answers.text("tool")),
                                answers.text("note")));
    }

    void part(String job, String lot, int pieces, String whatFor) {
        shop.stockBook().use(new Taking(lot, pieces, job, whatFor, false));
    }

    void met(String job, String quirk) {
        shop.jobBook().met(job, quirk);
    }

    void ready(String timer) {
        shop.standingBook().timerDone(timer);
    }

    void photo(JobCard card, Path file, String word) {
        shop.photos().add(file, new Photos.About(card.id(), card.horn(), null, word));
    }

    private @Nullable LocalDate day(String text) {
        if (text.isEmpty()) {
            return null;
        }
        if (text.matches("\\d{1,3}")) {
            return shop.books().today().plusDays(Integer.parseInt(text));
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new BadInput("promised: “" + text + "” is no day: write it as 2026-10-12, or 14 for in two weeks");
        }
    }

    private static @Nullable Integer minutes(Answers answers, String field) {
        if (answers.text(field).isEmpty()) {
            return null;
        }
        int minutes = answers.whole(field, "quoted minutes");
        if (minutes <= 0) {
            throw new BadInput("quoted minutes: name one or more");
        }
        return minutes;
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
