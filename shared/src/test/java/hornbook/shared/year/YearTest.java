package hornbook.shared.year;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.DemoShop;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.shared.year.YearAnswer.LateLine;
import hornbook.shared.year.YearAnswer.MonthLine;
import hornbook.shared.year.YearAnswer.SupplierLine;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The invented shop's years; the sums were counted from its exchange files by a script of another language. */
class YearTest {
    @TempDir
    static Path folder;

    private static Books books;
    private static YearAnswer of2023;

    @BeforeAll
    static void open() {
        books = DemoShop.open(folder.resolve("demo"));
        of2023 = new Year(books).answer(2023);
    }

    @AfterAll
    static void close() {
        books.close();
    }

    @Test
    void whatCameInAndTheHours() {
        assertThat(of2023.cameIn()).isEqualTo(35);
        assertThat(of2023.done()).isEqualTo(36);
        assertThat(of2023.minutes()).isEqualTo(16_496);
        assertThat(of2023.kinds())
                .extracting(kind -> kind.kind() + " " + kind.minutes())
                .containsExactly("overhaul 13913", "regulate 1344", "partial 740", "neck 382", "quick 117");
        assertThat(of2023.tasks().stream().mapToInt(t -> t.minutes()).sum()).isEqualTo(16_496);
    }

    @Test
    void whatWasUsedAndWhatItCost() {
        assertThat(of2023.used().stream().mapToInt(u -> u.pieces()).sum()).isEqualTo(654);
        assertThat(of2023.usedCost()).isEqualByComparingTo("1026.45");
        assertThat(of2023.spent()).isEqualByComparingTo("1043.17");
        assertThat(of2023.used().getFirst().item()).isEqualTo("sup-pad-single");
        assertThat(of2023.used().getFirst().cost()).isEqualByComparingTo("396.09");
        assertThat(of2023.remarks()).singleElement().asString().startsWith("143 of 654 pieces used have no price");
    }

    @Test
    void promisesAndQuotesThatDidNotHold() {
        assertThat(of2023.late()).hasSize(10);
        assertThat(of2023.late()).extracting(LateLine::job).contains("j-0123", "j-0152");
        assertThat(of2023.late().getFirst().days()).isEqualTo(3);
        assertThat(of2023.overrun()).hasSize(11).allMatch(o -> o.overPercent() > 20);
    }

    @Test
    void theSlowestSupplierComesFirst() {
        assertThat(of2023.suppliers().getFirst().name()).startsWith("Marlbeck");
        SupplierLine marlbeck = of2023.suppliers().getFirst();
        assertThat(marlbeck.typicalDays()).isEqualTo(17);
        assertThat(marlbeck.slowest()).isEqualTo(68);
    }

    @Test
    void theMonthsAddUp() {
        List<MonthLine> months = of2023.months();
        assertThat(months).hasSize(12);
        assertThat(months.stream().mapToInt(MonthLine::cameIn).sum()).isEqualTo(35);
        assertThat(months.stream().mapToInt(MonthLine::done).sum()).isEqualTo(36);
        assertThat(months.stream().mapToInt(MonthLine::minutes).sum()).isEqualTo(16_496);
        assertThat(months.stream().mapToInt(MonthLine::pieces).sum()).isEqualTo(654);
    }

    @Test
    void aYearThatIsNotOverSaysSo() {
        YearAnswer now = new Year(books).answer();
        assertThat(now.year()).isEqualTo(2026);
        assertThat(now.months()).hasSize(9);
        assertThat(now.declined()).isEqualTo(1);
        assertThat(now.minutes()).isEqualTo(6571);
        assertThat(now.remarks()).first().asString().contains("reckoned up to 2026-09-30");
    }

    @Test
    void otherYearsAreEmptyOrRefused() {
        assertThat(new Year(books).answer(2018).empty()).isTrue();
        assertThat(new Year(books).answer(2031).empty()).isTrue();
        assertThat(new Year(books).answer(2031).months()).isEmpty();
        assertThatThrownBy(() -> new Year(books).answer(0)).isInstanceOf(BadInput.class);
        assertThatThrownBy(() -> new Year(books).answer(Integer.MAX_VALUE)).isInstanceOf(BadInput.class);
    }

    /** What was used by mistake and taken back was not used. */
    @Test
    void whatWasTakenBackDoesNotCount() {
        int before = pieces();
        books.write(
                "use by mistake",
                w -> w.put(new Movement(
                        w.nextId(Movement.class),
                        books.today(),
                        "lot-0767",
                        MovementKind.USE,
                        -2,
                        null,
                        null,
                        null,
                        null,
                        null,
                        "")));
        assertThat(pieces()).isEqualTo(before + 2);
        books.undo(books.deeds(1).getFirst().number());
        assertThat(pieces()).isEqualTo(before);
    }

    private static int pieces() {
        return new Year(books)
                .answer().used().stream().mapToInt(u -> u.pieces()).sum();
    }

    /** By hand: promised for the 10th; one went on the 12th, one is here on the 30th, one is promised for later. */
    @Test
    void aHornThatIsStillHereIsLateUntilToday() {
        try (Books few = Books.open(folder.resolve("few"), Access.WRITE, LocalDate.of(2026, 9, 30))) {
            few.write("three jobs", w -> {
                w.put(new Horn("h-1", "unlisted", null, "alto", "", null, null, null, null, "none", "", ""));
                w.put(job("j-1", LocalDate.of(2026, 9, 10), LocalDate.of(2026, 9, 12), JobStatus.DONE));
                w.put(job("j-2", LocalDate.of(2026, 9, 10), null, JobStatus.OPEN));
                w.put(job("j-3", LocalDate.of(2026, 10, 10), null, JobStatus.WAITING));
            });
            assertThat(new Year(few).answer().late())
                    .extracting(line -> line.job() + " " + line.days())
                    .containsExactly("j-2 20", "j-1 2");
        }
    }

    private static Job job(String id, LocalDate promised, @Nullable LocalDate done, JobStatus status) {
        return new Job(
                id,
                "h-1",
                "quick",
                LocalDate.of(2026, 9, 1),
                promised,
                done,
                status,
                "spring gone",
                List.of(),
                null,
                "",
                null,
                null,
                null,
                "");
    }
}
