package hornbook.catalogue.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.estimate.HonestyAnswer.JobLine;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HonestyTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 9, 30);

    @TempDir
    Path folder;

    private static JobLine line(int n, long p50, long p80, int took) {
        LocalDate day = TODAY.minusDays(1000 - n);
        return new JobLine("j-" + n, "quick", day, day, p50, p80, p50, took, null, n);
    }

    /** By hand: of 60 jobs with ten before them 30 took 90, 15 took 110 and 15 took 150, said 100 and 120. */
    @Test
    void sharesAreCounted() {
        List<JobLine> lines = new ArrayList<>();
        for (int n = 0; n < 70; n++) {
            lines.add(line(n, 100, 120, n < 10 ? 500 : n % 4 < 2 ? 90 : n % 4 == 2 ? 110 : 150));
        }
        HonestyAnswer answer = HonestyAnswer.of(lines);
        assertThat(answer.jobs()).isEqualTo(60);
        assertThat(answer.underP50()).isCloseTo(0.5, within(1e-12));
        assertThat(answer.underP80()).isCloseTo(0.75, within(1e-12));
        assertThat(answer.over()).hasSize(3).allMatch(s -> s.jobs() == 20);
        assertThat(answer.remarks()).allMatch(r -> r.contains("no more off than chance"));
        assertThat(answer.logError())
                .isCloseTo((2 * Math.log(1 / 0.9) + Math.log(1.1) + Math.log(1.5)) / 4, within(1e-9));
    }

    /** Sixty of a hundred where eighty would be honest is far outside 1.96 sqrt(0.8 x 0.2 / 100) = 0.078. */
    @Test
    void whatIsTooBraveIsCalledSo() {
        List<JobLine> lines = new ArrayList<>();
        for (int n = 10; n < 110; n++) {
            lines.add(line(n, 100, 120, n % 10 < 5 ? 90 : n % 10 < 6 ? 110 : 150));
        }
        assertThat(HonestyAnswer.of(lines).remarks()).anyMatch(r -> r.contains("P80") && r.contains("too brave"));
    }

    @Test
    void withoutJobsItSaysSo() {
        HonestyAnswer none = HonestyAnswer.of(List.of());
        assertThat(none.jobs()).isZero();
        assertThat(none.underP50()).isNull();
        assertThat(none.remarks()).singleElement().asString().contains("nothing to hold the estimates against");
    }

    /** A shop that always takes half as long again as the book: once it has a few clocks it knows. */
    @Test
    void onlyTheJobsBeforeSpeak() {
        try (Books books = Books.open(folder.resolve("shop"), Access.WRITE, TODAY)) {
            books.write("forty jobs", w -> {
                w.put(new Horn("h-1", "unlisted", null, "alto", "", null, null, null, null, "none", "", ""));
                for (int n = 0; n < 40; n++) {
                    LocalDate day = LocalDate.of(2023, 1, 10).plusDays(30L * n);
                    String id = "j-" + n;
                    w.put(new Job(
                            id,
                            "h-1",
                            "quick",
                            day,
                            null,
                            day.plusDays(3),
                            JobStatus.DONE,
                            "keys clack",
                            List.of(),
                            null,
                            "",
                            null,
                            null,
                            null,
                            ""));
                    w.put(new TaskTime(
                            "t-a" + n, id, "task-teardown", 1, "1/1", day, minutes("task-teardown"), "A.A."));
                    w.put(new TaskTime("t-b" + n, id, "task-inspect", 1, "1/1", day, minutes("task-inspect"), "A.A."));
                }
            });
            HonestyAnswer answer = new Honesty(books, Catalogue.shipped()).answer();
            assertThat(answer.lines()).hasSize(40);
            assertThat(answer.jobs()).isGreaterThan(20);
            JobLine first = answer.lines().getFirst();
            JobLine last = answer.lines().getLast();
            assertThat(first.fromJobs()).isZero();
            assertThat((double) first.p50Min()).isCloseTo(first.bookMin(), within(4.0));
            assertThat((double) last.p50Min()).isCloseTo(last.tookMin(), within(0.1 * last.tookMin()));
            assertThatThrownBy(() -> new Honesty(books, Catalogue.shipped()).answer((done, total, doing) -> {
                        throw new CancellationException();
                    }))
                    .isInstanceOf(CancellationException.class);
        }
    }

    private static int minutes(String task) {
        return (int) Math.round(
                1.5 * Catalogue.shipped().tasks().get(task).medianMinutes().get("alto"));
    }
}
