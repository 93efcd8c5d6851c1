package hornbook.shared.pads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.DemoShop;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two repads from one tray of the invented shop; the right answer stands in the project's own trade notes. */
class PadsTest {
    @TempDir
    static Path folder;

    private static Books books;

    @BeforeAll
    static void open() {
        books = DemoShop.open(folder);
    }

    @AfterAll
    static void close() {
        books.close();
    }

    private final Pads pads = new Pads(books, StandardSizes.load().reader());

    private static Optional<Assignment> of(PadAnswer answer, String job, String cup) {
        return answer.assignments().stream()
                .filter(a -> job.equals(a.job()) && a.cup().equals(cup))
                .findFirst();
    }

    @Test
    void twoRepadsFromOneTrayServe47Of48CupsAtTwoHalfSteps() {
        PadAnswer answer = pads.forJobs(List.of(), false);
        assertThat(answer.assignments()).hasSize(47);
        assertThat(answer.halfSteps()).isEqualTo(2);
        assertThat(answer.cost()).isEqualTo(10);
        assertThat(answer.assignments()).allSatisfy(a -> {
            assertThat(a.thickness()).isEqualByComparingTo("4.0");
            assertThat(a.title()).contains("tan");
            assertThat(a.size().subtract(a.diameter()).abs()).isLessThanOrEqualTo(new BigDecimal("0.75"));
        });
        assertThat(of(answer, "j-0241", "cup-d").orElseThrow().size()).isEqualByComparingTo("32.5");
        assertThat(answer.assignments().stream().filter(a -> a.halfSteps() != 0).map(Assignment::ruled))
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactlyInAnyOrder(new BigDecimal("31"), new BigDecimal("33"));
    }

    @Test
    void whatIsShortIsALineToOrderWithTheSuppliersUsualDays() {
        PadAnswer answer = pads.forJobs(List.of(), false);
        assertThat(answer.shortages()).singleElement().satisfies(line -> {
            assertThat(line.job()).isEqualTo("j-0240");
            assertThat(line.cup()).isEqualTo("cup-d");
            assertThat(line.size()).isEqualByComparingTo("33.5");
            assertThat(line.lot()).isEqualTo("lot-0558");
            assertThat(line.supplier()).isEqualTo("sup-v-tidegate");
            assertThat(line.typicalDays()).isEqualTo(9);
            assertThat(line.why()).contains("2026-10-09", "before the 2026-10-16 promised", "ask before you promise");
        });
    }

    @Test
    void theLastOfASizeSaysWhatItStrands() {
        assertThat(pads.forJobs(List.of(), false).stranded())
                .anySatisfy(s -> assertThat(s).contains("31 mm", "lot-0553", "30.5 mm or 31.5 mm"));
    }

    @Test
    void oneJobIsReckonedWithTheOthersThatShareItsTray() {
        PadAnswer answer = pads.forJobs(List.of("j-0241"), false);
        assertThat(answer.assignments()).hasSize(24).allMatch(a -> "j-0241".equals(a.job()));
        assertThat(answer.shortages()).isEmpty();
        assertThat(answer.remarks()).anySatisfy(r -> assertThat(r).contains("together with j-0240"));
    }

    @Test
    void aJobWithoutMeasuredCupsIsNamedWithThoseThatHaveThem() {
        assertThatThrownBy(() -> pads.forJobs(List.of("j-0164"), false))
                .isInstanceOf(BadInput.class)
                .hasMessage("job j-0164 has no measured cup that waits for a pad: these have: j-0240, j-0241");
    }

    @Test
    void thinPadsGoOnlyWhereThePadsWereThin() {
        Cup usual = new Cup("cup-d", new BigDecimal("33.5"), null, null, null);
        Cup thin = new Cup("cup-d", new BigDecimal("33.5"), null, new BigDecimal("3.2"), null);
        assertThat(pads.forCups(List.of(usual), false).assignments()).isEmpty();
        assertThat(pads.forCups(List.of(thin), false).assignments())
                .singleElement()
                .satisfies(a -> assertThat(a.title()).contains("thin, brown, 33.5"));
    }

    /** 33.5 mm in tan 4.4 is there, but uneven: its seller is one to avoid. */
    @Test
    void goodsToBeAvoidedAreNotOffered() {
        Cup cup = new Cup("cup-low-c", new BigDecimal("33.5"), null, new BigDecimal("4.4"), null);
        assertThat(pads.forCups(List.of(cup), false).assignments()).isEmpty();
        assertThat(pads.forCups(List.of(cup), false).shortages().getFirst().why())
                .contains("keeps no pad, 4.4 mm");
    }

    @Test
    void aHornsResonatorsAreOfOneStyle() {
        List<Cup> cups = List.of(
                new Cup("cup-a", new BigDecimal("22.6"), null, null, new BigDecimal("17.6")),
                new Cup("cup-g", new BigDecimal("26.9"), null, null, new BigDecimal("21.7")),
                new Cup("cup-fs", new BigDecimal("29.0"), null, null, new BigDecimal("23.9")));
        PadAnswer answer = pads.forCups(cups, false);
        // Domed metal ends at 17 mm, so that only plastic makes a whole set.
        assertThat(answer.resonators()).hasSize(3).allMatch(a -> a.title().contains("plastic"));
        assertThat(answer.resonators().getFirst().size()).isEqualByComparingTo("14.5");
    }
}
