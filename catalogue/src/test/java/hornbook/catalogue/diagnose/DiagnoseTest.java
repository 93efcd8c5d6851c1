package hornbook.catalogue.diagnose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.diagnose.DiagnoseAnswer.CauseLine;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Fault;
import hornbook.shared.shop.BadInput;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class DiagnoseTest {
    private static final Catalogue SHIPPED = Catalogue.shipped();
    private static final Diagnose BOOK = new Diagnose(SHIPPED, List.of());
    private static final String WORDS = "low notes burble";

    private static DiagnoseQuestion said(Map<String, Boolean> answers) {
        return new DiagnoseQuestion(WORDS, answers, Set.of(), null);
    }

    private static double chance(DiagnoseAnswer answer, String cause) {
        return answer.causes().stream()
                .filter(c -> c.id().equals(cause))
                .findFirst()
                .orElseThrow()
                .probability();
    }

    /** Shares of the four causes, 0.48 0.24 0.16 0.12 (trade figures), of the 95 in 100 that are listed. */
    @Test
    void theBookSpeaksWhereTheShopHasNoJobs() {
        DiagnoseAnswer answer = BOOK.answer(DiagnoseQuestion.of(WORDS));
        assertThat(answer.causes()).extracting(CauseLine::id).startsWith("f-low-warble.1");
        assertThat(chance(answer, "f-low-warble.1")).isCloseTo(0.95 * 0.48, within(1e-12));
        assertThat(answer.causes().stream().mapToDouble(CauseLine::probability).sum() + answer.somethingElse())
                .isCloseTo(1, within(1e-12));
        assertThat(answer.advice()).isEqualTo(Advice.CHECK);
        assertThat(answer.remarks()).anyMatch(r -> r.contains("book's alone"));
    }

    /**
     * By hand: 0.456 at 4 + 1 min is the best first; the horn warm, sighting the brace (0.152 at 2 min), the mouthpiece
     * (0.114 at 2), then the lamp (0.228 at 3 + 2): spent 5, 7, 9, 14.
     */
    @Test
    void minutesToFindAreTheMeanOverTheOrder() {
        DiagnoseAnswer answer = BOOK.answer(DiagnoseQuestion.of(WORDS));
        assertThat(answer.next()).isNotNull();
        assertThat(answer.then()).containsExactly("f-low-warble.3", "f-low-warble.4", "f-low-warble.2");
        assertThat(answer.minutesToFind())
                .isCloseTo(5 * 0.456 + 7 * 0.152 + 9 * 0.114 + 14 * (0.228 + 0.05), within(1e-9));
        assertThat(answer.minutesToCure()).isGreaterThan(answer.minutesToFind() + 10);
    }

    /** By hand, Bayes: 0.456 x 0.95 against 0.544 x 0.02. */
    @Test
    void aYesNearlySettlesIt() {
        DiagnoseAnswer answer = BOOK.answer(said(Map.of("low-warble.1", true)));
        assertThat(chance(answer, "f-low-warble.1"))
                .isCloseTo(0.456 * 0.95 / (0.456 * 0.95 + 0.544 * 0.02), within(1e-9));
        assertThat(answer.advice()).isEqualTo(Advice.CURE);
        assertThat(answer.next()).isNull();
        assertThat(answer.cure()).isNotNull();
        assertThat(answer.cure().fault()).isEqualTo("f-gs-leak");
        assertThat(answer.cure().tasks()).extracting(t -> t.id()).contains("task-regulate-stack");
    }

    @Test
    void aNoMovesTheOddsAndItsSetUpStaysReady() {
        DiagnoseAnswer answer = BOOK.answer(said(Map.of("f-low-warble.1", false)));
        assertThat(chance(answer, "f-low-warble.1")).isLessThan(0.05);
        assertThat(answer.then()).doesNotContain("f-low-warble.1");
        DiagnoseAnswer.NextCheck next = answer.next();
        assertThat(next).isNotNull();
        assertThat(next.setUp()).isNull();
    }

    @Test
    void itSaysWhenToStopAndAsk() {
        DiagnoseAnswer none = BOOK.answer(said(Map.of(
                "f-low-warble.1", false, "f-low-warble.2", false, "f-low-warble.3", false, "f-low-warble.4", false)));
        assertThat(none.advice()).isEqualTo(Advice.ASK);
        assertThat(none.why()).contains("ask somebody");
        assertThat(none.somethingElse()).isGreaterThan(0.4);
        DiagnoseAnswer two = BOOK.answer(said(Map.of("f-low-warble.2", true, "f-low-warble.3", true)));
        assertThat(two.advice()).isEqualTo(Advice.ASK);
        assertThat(two.why()).contains("two faults");
    }

    /** By hand: without the G# check the order is brace, mouthpiece and lamp, and its chance is found by none of them. */
    @Test
    void aCheckThatCannotBeMadeIsNotOfferedAndMovesNoOdds() {
        DiagnoseQuestion question = new DiagnoseQuestion(WORDS, Map.of(), Set.of("low-warble.1"), null);
        DiagnoseAnswer answer = BOOK.answer(question);
        assertThat(chance(answer, "f-low-warble.1")).isCloseTo(0.456, within(1e-12));
        assertThat(answer.next()).isNotNull();
        assertThat(answer.next().id()).isEqualTo("f-low-warble.3");
        assertThat(answer.then()).containsExactly("f-low-warble.2", "f-low-warble.4");
        assertThat(answer.minutesToFind()).isCloseTo(2 * 0.152 + 7 * 0.228 + 13 * (0.114 + 0.456 + 0.05), within(1e-9));
        Set<String> all = Set.of("f-low-warble.1", "f-low-warble.2", "f-low-warble.3", "f-low-warble.4");
        DiagnoseAnswer none = BOOK.answer(new DiagnoseQuestion(WORDS, Map.of(), all, null));
        assertThat(none.advice()).isEqualTo(Advice.ASK);
        assertThat(none.why()).startsWith("no check could be made");
    }

    /** What the words of the trade's checks name; a bare look needs none. */
    @Test
    void aCheckNamesItsTools() {
        assertThat(tools("f-seam-leak")).containsExactly("tool-leak-tester");
        assertThat(tools("f-hinge-shake")).containsExactly("tool-pin-gauges");
        assertThat(tools("f-spring-heavy")).containsExactly("tool-spring-scale");
        assertThat(tools("f-gs-leak")).containsExactly("tool-feeler");
        assertThat(tools("f-spring-broken")).isEmpty();
    }

    private static List<String> tools(String fault) {
        DiagnoseAnswer.NextCheck next = BOOK.answer(DiagnoseQuestion.of(fault)).next();
        assertThat(next).isNotNull();
        return next.tools().stream().map(t -> t.id()).toList();
    }

    /** By hand: common practice counts as ten horns; 12 jobs had the brace moved, 3 a G# that leaked. */
    @Test
    void closedJobsMoveTheOdds() {
        List<ClosedJob> jobs =
                new ArrayList<>(Collections.nCopies(12, new ClosedJob(WORDS, Set.of("f-low-warble.3"), "m-a")));
        jobs.addAll(Collections.nCopies(3, new ClosedJob("was here", Set.of("f-low-warble", "f-gs-leak"), "m-b")));
        jobs.addAll(Collections.nCopies(40, new ClosedJob("keys clack", Set.of("f-gs-leak"), "m-b")));
        DiagnoseAnswer answer = new Diagnose(SHIPPED, jobs).answer(DiagnoseQuestion.of(WORDS));
        assertThat(answer.fromJobs()).isEqualTo(15);
        assertThat(answer.causes().getFirst().id()).isEqualTo("f-low-warble.3");
        assertThat(answer.causes().getFirst().jobs()).isEqualTo(12);
        assertThat(chance(answer, "f-low-warble.3")).isCloseTo(0.95 * (10 * 0.16 + 12) / 25, within(1e-9));
        assertThat(chance(answer, "f-low-warble.1")).isCloseTo(0.95 * (10 * 0.48 + 3) / 25, within(1e-9));
    }

    @Test
    void hornsOfTheSameModelCountForMore() {
        List<ClosedJob> jobs = List.of(
                new ClosedJob(WORDS, Set.of("f-low-warble.3"), "m-a"),
                new ClosedJob(WORDS, Set.of("f-low-warble.4"), "m-other"));
        Suspects own = Suspects.of(Map.of("f-low-warble", 1.0), jobs, "m-a", SHIPPED);
        Suspects any = Suspects.of(Map.of("f-low-warble", 1.0), jobs, null, SHIPPED);
        assertThat(own.prior().get("f-low-warble.3")).isGreaterThan(any.prior().get("f-low-warble.3"));
    }

    @Test
    void everyShippedFaultHasAnOrderAndATask() {
        for (Fault fault : SHIPPED.faults().values()) {
            DiagnoseAnswer answer = BOOK.answer(DiagnoseQuestion.of(fault.id()));
            assertThat(answer.next()).as(fault.id()).isNotNull();
            assertThat(answer.cure()).as(fault.id()).isNotNull();
            assertThat(answer.cure().tasks()).as(fault.id()).isNotEmpty();
            assertThat(answer.minutesToFind()).as(fault.id()).isPositive();
        }
    }

    @Test
    void whatNeedsAKeyOffNeedsAYesAndSolderIsWarnedOf() {
        DiagnoseAnswer rims = BOOK.answer(DiagnoseQuestion.of("f-rim-uneven"));
        assertThat(rims.next()).isNotNull();
        assertThat(rims.next().needsYes()).isTrue();
        DiagnoseAnswer seam = BOOK.answer(DiagnoseQuestion.of("f-seam-leak"));
        assertThat(seam.cure()).isNotNull();
        assertThat(seam.cure().cautions()).isNotEmpty().allMatch(c -> c.text().contains("safety data sheet"));
    }

    @Test
    void badQuestionsAreOneClearLine() {
        assertThatThrownBy(() -> BOOK.answer(DiagnoseQuestion.of(" ")))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("no symptom was named");
        assertThatThrownBy(() -> BOOK.answer(said(Map.of("low-warbl", true))))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("its checks are f-low-warble.1");
        DiagnoseAnswer strange = BOOK.answer(DiagnoseQuestion.of("smells of fish"));
        assertThat(strange.causes()).isEmpty();
        assertThat(strange.nearest()).hasSize(3);
    }
}
