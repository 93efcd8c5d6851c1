package hornbook.indexer.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.indexer.fit.Refused.Reason;
import hornbook.shared.shop.BadInput;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Story 4 of the project's trade notes, and other questions, on the demonstration shop. */
class DemoFitTest {
    @TempDir
    static Path folder;

    private static DemoShop shop;
    private static Fit fit;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder);
        fit = shop.fit();
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    private static FitAnswer rod(String diameter, String length, String thread) {
        return fit.answer(new FitQuestion(
                "part-hinge-rod",
                Optional.of(diameter),
                Optional.of(length),
                Optional.empty(),
                Optional.of(thread),
                List.of(),
                List.of(),
                Optional.empty(),
                false,
                1));
    }

    @Test
    void theRodOfStoryFour() {
        FitAnswer answer = rod("2.38", "118.0", "2-56");
        FitPlan best = answer.plans().getFirst();
        assertThat(best.lot()).isEqualTo("lot-0815");
        assertThat(best.drawer()).isEqualTo("d-chart-r3c1");
        assertThat(best.label()).isEqualTo("LONG RODS U.S.");
        assertThat(best.steps()).extracting(FitStep::operation).containsExactly("op-cut-length", "op-slot-head");
        assertThat(best.steps().getFirst().amount()).isEqualTo(13.5);
        assertThat(best.steps().getFirst().keeps()).isEqualTo("from the slot end");
        assertThat(answer.plans()).extracting(FitPlan::lot).contains("lot-0797", "lot-0838", "lot-0932");
    }

    /** Turned down to 2.16 mm at most: the major diameter of 2-56, 2.184 mm (ASME B1.1), less 0.02. */
    @Test
    void theBarIsTurnedDownForTheDie() {
        FitPlan bar = rod("2.38", "118.0", "2-56").plans().stream()
                .filter(p -> p.lot().equals("lot-0838"))
                .findFirst()
                .orElseThrow();
        FitStep turned = bar.steps().stream()
                .filter(s -> s.dimension().equals("end"))
                .findFirst()
                .orElseThrow();
        assertThat(Double.parseDouble(turned.to())).isBetween(2.05, 2.1645);
        assertThat(bar.tools()).extracting(ToolWanted::member).contains("die 2-56 UNC");
    }

    @Test
    void thePatternIsNeverOfferedAndTheRestIsRefusedWithReasons() {
        FitAnswer answer = rod("2.38", "118.0", "2-56");
        assertThat(no(answer, "lot-0494").reason()).isEqualTo(Reason.KEEPSAKE);
        assertThat(no(answer, "lot-0816").reason()).isEqualTo(Reason.TOO_SMALL);
        assertThat(no(answer, "lot-0816").why()).contains("109");
        assertThat(no(answer, "lot-0817").reason()).isEqualTo(Reason.OVER_LIMIT);
        assertThat(answer.plans()).extracting(FitPlan::lot).doesNotContain("lot-0494");
        assertThat(answer.refused()).hasSize(20);
    }

    private static Refused no(FitAnswer answer, String lot) {
        return answer.refused().stream()
                .filter(r -> r.lot().equals(lot))
                .findFirst()
                .orElseThrow();
    }

    /** The 4-36 die was lent in June 2024 (the trade notes, what is wrong in the shop, 5). */
    @Test
    void theLentDieIsNotPlannedWith() {
        assertThat(rod("2.84", "200", "4-36").plans().stream().flatMap(p -> p.steps().stream()))
                .extracting(FitStep::operation)
                .contains("op-thread-single")
                .doesNotContain("op-thread-ext");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "part-hinge-rodd; length=10; part-hinge-rod",
                "part-hinge-rod; length=-10; below nought",
                "part-hinge-rod; lenght=10; length",
                "part-hinge-rod; thread=M3x0.61; nearest",
                "part-hinge-rod; length=2 mm..1/8 in; mixes two units",
                "part-hinge-rod; length; name=value",
                "part-key-whole; clearance=0.01..0.03; --with rod=",
            })
    void whatCannotBeReadIsSaidInOneLine(String kind, String with, String says) {
        assertThatThrownBy(() -> fit.answer(FitQuestion.of(kind, with)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(says)
                .message()
                .doesNotContain("\n");
    }

    @Test
    void anotherMakesPartIsChargedItsClassThoughItFits() {
        FitQuestion plain = FitQuestion.of("part-roller", "od=5.9..6.1", "length=14.9..15.1", "bore=2.08..2.12");
        FitQuestion forModel = new FitQuestion(
                plain.kind(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                plain.with(),
                List.of(),
                Optional.of("m-strevani-vedetta-tenor"),
                false,
                1);
        FitPlan own = fit.answer(plain).plans().getFirst();
        FitPlan foreign = fit.answer(forModel).plans().stream()
                .filter(p -> p.lot().equals(own.lot()))
                .findFirst()
                .orElseThrow();
        assertThat(own.charge()).isZero();
        assertThat(foreign.charge()).isEqualTo(8);
    }
}
