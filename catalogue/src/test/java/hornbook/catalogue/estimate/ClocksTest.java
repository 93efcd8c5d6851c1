package hornbook.catalogue.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.shared.store.Writing;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClocksTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 9, 30);

    @TempDir
    Path folder;

    private static void job(Writing w, String id, @Nullable LocalDate done, JobStatus status) {
        LocalDate in = TODAY.minusDays(30);
        w.put(new Job(id, "h-1", "quick", in, null, done, status, "clacks", List.of(), null, "", null, null, null, ""));
        w.put(new TaskTime("t-" + id, id, "task-teardown", 1, "1/1", in, 40, "A.A."));
        w.put(new TaskTime("u-" + id, id, "task-teardown", 1, "2/2", in.plusDays(1), 20, "A.A."));
    }

    /** A job on the bench, and one that came to nothing, tell nothing; one handed back later tells nothing yet. */
    @Test
    void onlyClosedJobsSpeak() {
        try (Books books = Books.open(folder, Access.WRITE, TODAY)) {
            books.write("jobs", w -> {
                w.put(new Horn("h-1", "unlisted", null, "alto", "", null, null, null, null, "none", "", ""));
                job(w, "j-1", TODAY.minusDays(20), JobStatus.DONE);
                job(w, "j-2", null, JobStatus.OPEN);
                job(w, "j-3", null, JobStatus.WAITING);
                job(w, "j-4", null, JobStatus.DECLINED);
                job(w, "j-5", TODAY.minusDays(5), JobStatus.DONE);
            });
            assertThat(Clocks.of(books)).extracting(Clocked::job).containsExactly("j-1", "j-5");
            assertThat(Clocks.of(books)).extracting(Clocked::minutes).containsExactly(60, 60);
            List<Clocked> then = books.reading(view -> Clocks.read(view).until(TODAY.minusDays(10)));
            assertThat(then).extracting(Clocked::job).containsExactly("j-1");
        }
    }
}
