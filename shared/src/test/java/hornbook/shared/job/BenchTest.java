package hornbook.shared.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.SmallShop;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.MapRow;
import hornbook.shared.shop.RunningClock;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.shop.Went;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A horn on the bench, from taking in to its coming by again. */
class BenchTest {
    @TempDir
    Path folder;

    private Books books;
    private StandingBook standing;
    private Clocks clocks;
    private String job;

    @BeforeEach
    void aHornIsTakenIn() {
        books = SmallShop.open(folder);
        standing = new StandingBook(books, "hook 2"::equals);
        clocks = new Clocks(books);
        LocalDate promised = books.today().plusDays(9);
        job = books.touched(
                        new Intake(books)
                                .takeIn(new TakeIn(
                                        null, "alto", "12?45", null, "partial", "leaks", promised, 120, null, null,
                                        "")),
                        Job.class)
                .getFirst();
    }

    @AfterEach
    void close() {
        books.close();
    }

    private OnBench bench() {
        return new Jobs(books)
                .onBench().stream()
                        .filter(on -> on.id().equals(job))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void theBenchSaysWhatRunsWhereItIsAndWhatSoaks() {
        clocks.start(job, "task-teardown", 1, "N.O.");
        standing.whereabouts(job, "horn", "hook 2", "");
        standing.whereabouts(job, "horn", "hook 2", "lower stack rod");
        standing.timer(job, "penetrant", Duration.ofMinutes(90));
        OnBench on = bench();
        assertThat(on.quotedMin()).isEqualTo(120);
        assertThat(on.standing().clocks())
                .extracting(Standing.Clock::task, Standing.Clock::forgotten)
                .containsExactly(org.assertj.core.api.Assertions.tuple("task-teardown", false));
        assertThat(on.standing().pieces()).extracting(Standing.Piece::waitsFor).containsExactly("lower stack rod");
        Standing.Soaking soaks = on.standing().timers().getFirst();
        assertThat(Duration.between(soaks.since(), soaks.ready())).isEqualTo(Duration.ofMinutes(90));
        standing.timerDone(soaks.id());
        assertThat(bench().standing().timers()).isEmpty();
    }

    @Test
    void aClockRunsOnThroughACrashAndIsNotBelievedNextMorning() {
        clocks.start(job, "task-teardown", 1, "N.O.");
        LocalDate today = books.today();
        books.close();
        books = Books.open(folder, Access.WRITE, today);
        assertThat(bench().standing().clocks()).hasSize(1);
        books.close();
        books = Books.open(folder, Access.WRITE, today.plusDays(1));
        assertThat(bench().standing().clocks()).allMatch(Standing.Clock::forgotten);
        assertThatThrownBy(() -> new Clocks(books).stop(job, null, null)).isInstanceOf(BadInput.class);
        new Clocks(books).stop(job, null, 35);
        assertThat(bench().minutes()).isEqualTo(35);
    }

    @Test
    void afterAPauseTheSameWorkGoesOn() {
        assertThatThrownBy(() -> clocks.goOn(job, "N.O.")).hasMessageContaining("name the task");
        clocks.start(job, "task-pad-fit", 12, "N.O.");
        clocks.stop(job, null, 30);
        assertThat(bench().lastTask()).isEqualTo("task-pad-fit");
        clocks.goOn(job, "N.O.");
        assertThat(clocks.running()).extracting(RunningClock::count).containsExactly(12);
        clocks.stop(job, null, 20);
        assertThat(books.where(TaskTime.class, "job", job)).hasSize(2);
        assertThat(new Jobs(books).job(job).orElseThrow().tasks())
                .containsExactly(new JobCard.TaskLine("task-pad-fit", 12, 50, "N.O."));
    }

    @Test
    void measuresOfAKeyGatherInOneRow() {
        MapBook map = new MapBook(books);
        map.measure(job, "F", "cup-f", KeyField.ROD_DIAMETER, "2,38");
        map.measure(job, "F", "cup-f", KeyField.THREAD, "2-56 UNC");
        assertThat(books.where(MapRow.class, "job", job)).singleElement().satisfies(row -> {
            assertThat(row.diameterMm()).isEqualByComparingTo(new BigDecimal("2.38"));
            assertThat(row.thread()).isEqualTo("2-56 UNC");
            assertThat(row.cup()).isEqualTo("cup-f");
        });
        assertThatThrownBy(() -> map.measure(job, "F", "cup-f", KeyField.ROD_LENGTH, "long"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("Rod length");
    }

    @Test
    void whatIsDoneGoesBackAndComesByOnceMore() {
        AfterCare after = new AfterCare(books);
        assertThatThrownBy(() -> after.handBack(job)).hasMessageContaining("close it first");
        standing.whereabouts(job, "horn", "hook 2", "");
        new Closing(books).close(job, new Ended(Went.SMOOTH, "one pad", false));
        after.handBack(job);
        assertThat(new Jobs(books).job(job).orElseThrow().standing().pieces())
                .extracting(Standing.Piece::where)
                .containsExactly("handed back to its owner");
        assertThat(after.due()).extracting(AfterCare.Due::job).doesNotContain(job);
        LocalDate later = books.today().plusWeeks(5);
        books.close();
        books = Books.open(folder, Access.WRITE, later);
        AfterCare weeksLater = new AfterCare(books);
        assertThat(weeksLater.due()).extracting(AfterCare.Due::job).contains(job);
        weeksLater.followUp(job, "held", "");
        assertThat(weeksLater.due()).extracting(AfterCare.Due::job).doesNotContain(job);
    }
}
