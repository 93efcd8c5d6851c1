package hornbook.shared.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.SmallShop;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Consent;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.PadUsed;
import hornbook.shared.shop.RunningClock;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.shop.Went;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobBookTest {
    @TempDir
    Path folder;

    private Books books;
    private JobBook jobs;
    private Clocks clocks;
    private String job;

    @BeforeEach
    void aHornIsTakenIn() {
        books = SmallShop.open(folder);
        jobs = new JobBook(books);
        clocks = new Clocks(books);
        Deed deed = new Intake(books)
                .takeIn(new TakeIn(null, "alto", "12?45", null, "partial", "leaks", null, null, "O-900", null, ""));
        job = books.touched(deed, Job.class).getFirst();
    }

    @AfterEach
    void close() {
        books.close();
    }

    @Test
    void aNewHornIsNotPlacedUntilSomebodyLooks() {
        Horn horn = books.find(
                        Horn.class, books.find(Job.class, job).orElseThrow().horn())
                .orElseThrow();
        assertThat(horn.model()).isEqualTo("unlisted");
        assertThat(horn.serial()).isEqualTo("12?45");
    }

    @Test
    void aClockRunsInTheBooksAndStopsIntoMinutes() {
        clocks.start(job, "task-teardown", 1, "N.O.");
        assertThat(clocks.running()).extracting(RunningClock::task).containsExactly("task-teardown");
        clocks.stop(job, null, 25);
        assertThat(clocks.running()).isEmpty();
        assertThat(books.where(TaskTime.class, "job", job))
                .extracting(TaskTime::minutes)
                .containsExactly(25);
    }

    @Test
    void twoHandsDoOneThing() {
        clocks.start(job, "task-teardown", 1, "N.O.");
        clocks.start(job, "task-clean-body", 1, "N.O.");
        clocks.start(job, "task-clean-keys", 1, "P.V.");
        assertThat(clocks.running())
                .extracting(RunningClock::task)
                .containsExactly("task-clean-body", "task-clean-keys");
        assertThatThrownBy(() -> clocks.stop(job, null, null)).hasMessageContaining("--who");
    }

    @Test
    void aForgottenClockIsAskedAbout() {
        books.write("yesterday", w -> w.put(yesterdays()));
        assertThatThrownBy(() -> clocks.stop(job, null, null))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("--minutes");
        clocks.stop(job, null, 50);
        assertThat(books.where(TaskTime.class, "job", job))
                .extracting(TaskTime::minutes)
                .containsExactly(50);
    }

    @Test
    void aJobIsClosedWithASentenceAndCanBeOpenedAgainByUndo() {
        clocks.told(job, "task-inspect", 1, 16, null, "N.O.");
        Deed deed = new Closing(books).close(job, new Ended(Went.SMOOTH, "no surprises", false));
        assertThat(books.find(Job.class, job).orElseThrow().minutesTotal()).isEqualTo(16);
        books.undo(deed.number());
        assertThat(books.find(Job.class, job).orElseThrow().done()).isNull();
    }

    @Test
    void whatRunsEndsWithTheJobInTheSameDeed() {
        clocks.start(job, "task-inspect", 1, "N.O.");
        new StandingBook(books, "hook 2"::equals).timer(job, "penetrant", Duration.ofMinutes(90));
        Deed deed = new Closing(books).close(job, new Ended(Went.FAIR, "", true));
        Standing after = new Jobs(books).job(job).orElseThrow().standing();
        assertThat(after.clocks()).isEmpty();
        assertThat(after.timers()).isEmpty();
        assertThat(after.pieces()).extracting(Standing.Piece::where).containsExactly("handed back to its owner");
        assertThatThrownBy(() -> new Closing(books).close(job, new Ended(Went.FAIR, "", false)))
                .hasMessageContaining("closed already");
        assertThatThrownBy(() -> new AfterCare(books).handBack(job)).hasMessageContaining("handed back before");
        books.undo(deed.number());
        Standing before = new Jobs(books).job(job).orElseThrow().standing();
        assertThat(before.clocks()).hasSize(1);
        assertThat(before.timers()).hasSize(1);
        assertThat(before.pieces()).isEmpty();
    }

    @Test
    void aForgottenClockIsAskedAboutBeforeAJobCloses() {
        books.write("yesterday", w -> w.put(yesterdays()));
        assertThatThrownBy(() -> new Closing(books).close(job, new Ended(Went.FAIR, "", false)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("--minutes");
        assertThat(books.find(Job.class, job).orElseThrow().done()).isNull();
    }

    private RunningClock yesterdays() {
        return new RunningClock(
                "clock-0099", job, "task-regulate-full", 1, LocalDateTime.of(2026, 9, 29, 17, 0), "N.O.");
    }

    @Test
    void consentIsWrittenWithDayAndWord() {
        jobs.consent(job, "filed spot on a key", "O-900");
        assertThat(books.where(Consent.class, "job", job).getFirst().day()).isEqualTo("2026-09-30");
    }

    @Test
    void whatCannotBeIsNotWrittenDown() {
        BigDecimal size = BigDecimal.valueOf(31);
        refused(() -> jobs.pad(job, new PadFitted("cup-f", null, size.negate(), null, null, "", false)), "no pad");
        refused(
                () -> jobs.pad(job, new PadFitted("cup-f", null, size, null, "lot-9999", "", false)),
                "no lot lot-9999");
        refused(() -> clocks.told(job, "task-inspect", 1, 1441, null, "N.O."), "more than a day");
        refused(() -> clocks.told(job, "task-inspect", 1, 5, books.today().plusDays(1), "N.O."), "yet to come");
        refused(() -> jobs.change(job, new JobChange(null, null, -3, null)), "cannot be quoted");
        assertThat(books.where(PadUsed.class, "job", job)).isEmpty();
    }

    private static void refused(ThrowingCallable deed, String why) {
        assertThatThrownBy(deed).isInstanceOf(BadInput.class).hasMessageContaining(why);
    }
}
