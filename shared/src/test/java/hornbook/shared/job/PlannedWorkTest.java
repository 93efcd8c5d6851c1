package hornbook.shared.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.Export;
import hornbook.shared.exchange.Import;
import hornbook.shared.exchange.SmallShop;
import hornbook.shared.job.JobCard.PlannedLine;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Job;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlannedWorkTest {
    private static final PlannedLine PADS = new PlannedLine("task-pad-fit", 24);

    @TempDir
    Path folder;

    private Books books;
    private PlannedWork work;
    private String job;

    @BeforeEach
    void aHornIsTakenIn() {
        books = SmallShop.open(folder.resolve("shop"));
        work = new PlannedWork(books);
        Deed deed = new Intake(books)
                .takeIn(new TakeIn(null, "alto", "12?45", null, "partial", "leaks", null, null, "O-900", null, ""));
        job = books.touched(deed, Job.class).getFirst();
    }

    @AfterEach
    void close() {
        books.close();
    }

    @Test
    void whatIsPlannedStandsOnTheJobsSheet() {
        work.plan(job, Map.of("task-pad-fit", 24));
        work.plan(job, Map.of("task-teardown", 1));
        assertThat(new Jobs(books).job(job).orElseThrow().planned())
                .containsExactly(PADS, new PlannedLine("task-teardown", 1));
    }

    @Test
    void anotherCountReplacesAndNoneTakesOff() {
        work.plan(job, Map.of("task-pad-fit", 24, "task-teardown", 1));
        work.plan(job, Map.of("task-pad-fit", 6));
        assertThat(work.of(job)).contains(new PlannedLine("task-pad-fit", 6)).hasSize(2);
        Deed off = work.plan(job, Map.of("task-teardown", 0));
        assertThat(off.title()).isEqualTo("task-teardown no longer planned on " + job);
        assertThat(work.of(job)).hasSize(1);
    }

    @Test
    void aPlanCanBeTakenBack() {
        Deed first = work.plan(job, Map.of("task-pad-fit", 24));
        Deed second = work.plan(job, Map.of("task-pad-fit", 6));
        books.undo(second.number());
        assertThat(work.of(job)).containsExactly(PADS);
        books.undo(first.number());
        assertThat(work.of(job)).isEmpty();
    }

    @Test
    void whatCannotBePlannedIsOneClearLine() {
        assertThatThrownBy(() -> work.plan("j-9999", Map.of("task-pad-fit", 24)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("there is no job j-9999");
        assertThatThrownBy(() -> work.plan(job, Map.of("task-pad-fit", -2)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("-2 of task-pad-fit");
        work.plan(job, Map.of("task-pad-fit", 24));
        assertThatThrownBy(() -> work.plan(job, Map.of("task-pad-fit", 24)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("planned already");
    }

    @Test
    void itGoesOutAndComesInAgain() throws Exception {
        work.plan(job, Map.of("task-pad-fit", 24));
        Path out = folder.resolve("out");
        new Export(books, SmallShop.NO_KNOWLEDGE).to(out);
        assertThat(Files.readString(out.resolve("planned_tasks.csv")))
                .startsWith("id,job,task,count")
                .contains(job + ",task-pad-fit,24");
        try (Books other = SmallShop.open(folder.resolve("other"))) {
            new Import(other, SmallShop.NO_KNOWLEDGE).from(out, false);
            assertThat(new PlannedWork(other).of(job)).containsExactly(PADS);
        }
    }
}
