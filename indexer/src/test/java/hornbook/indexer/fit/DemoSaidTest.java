package hornbook.indexer.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.indexer.fit.Refused.Reason;
import hornbook.shared.shop.BadInput;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said beside the plans on the demonstration shop: tools that are out, what is amiss, what to measure, what to buy. */
class DemoSaidTest {
    @TempDir
    static Path folder;

    private static DemoShop shop;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    /**
     * Both .113 in (2.870) and 2.88 mm stand in the set. From 7/64 in (2.778) the one takes 0.092, two bites of 0.05, the
     * other 0.102, three: the first is fetched, and the step says the size that it leaves.
     */
    @Test
    void aReamerLeavesItsOwnSize() {
        FitPlan best =
                shop.ask("hinge tube", "-; 1-1/2 in; 2.88; -", "-").plans().getFirst();
        assertThat(best.steps().get(1).to()).isEqualTo("2.87");
        assertThat(best.tools()).extracting(ToolWanted::member).contains("reamer .113\"");
    }

    /** The 4-36 die is lent; with it the bar of .112 in would take 2 + 4 + 6 + 3.5 in place of single-pointing. */
    @Test
    void aToolThatIsOutIsNamedWhereItWouldBeCheaper() {
        FitAnswer answer = shop.ask("rod", "2.84; 200; -; 4-36", "-");
        CheaperWith with = answer.plans().stream()
                .filter(plan -> plan.lot().equals("lot-0841"))
                .findFirst()
                .orElseThrow()
                .withTool();
        assertThat(with).isNotNull();
        assertThat(with.lacks()).contains("die 4-36", "lent to B-04 since 2024-06-11");
        assertThat(with.total()).isEqualTo(15.5);
        assertThat(answer.plans().getFirst().withTool()).isNull();
    }

    /** Rods of 4-36 long enough gone, the lent die decides what is cheapest: said before anybody begins. */
    @Test
    void whatWouldBeCheapestButForAToolIsSaid() {
        FitAnswer answer = shop.ask("rod", "2.84; 215; -; 4-36", "-");
        assertThat(answer.plans().getFirst().withTool()).isNotNull();
        assertThat(shop.ask("rod", "2.50; 105; -; M2.5x0.45", "-").plans())
                .extracting(FitPlan::withTool)
                .containsOnlyNulls();
    }

    /** The punch of 11 mm leaves a whisker, and nothing else is 11 mm across. */
    @Test
    void aChippedPunchStopsThePlan() {
        FitAnswer answer = shop.ask("felt bumper", "11; 6; -; -; colour=white", "-");
        assertThat(answer.plans()).isEmpty();
        assertThat(no(answer, "lot-0777").reason()).isEqualTo(Reason.LACKS_TOOL);
        assertThat(no(answer, "lot-0777").why()).contains("punch 11 mm", "chipped");
    }

    /** A spud is not turned anew out of a spud, least of all a thick one out of a thin one. */
    @Test
    void whatIsMadeAnewIsMadeOfStock() {
        FitAnswer answer = shop.ask("spud", "4.5; 3.2; -; -", "-");
        assertThat(answer.plans()).isEmpty();
        assertThat(no(answer, "lot-0254").why()).contains("height too large: 3.4");
        assertThat(answer.buy()).hasSize(2);
        assertThat(answer.buy().getLast()).startsWith("Brass rod, free-cutting of 4.4 mm");
    }

    /** A tube of 2.4 mm is not bushed to come to 2.88. */
    @Test
    void aBushMakesABoreSmaller() {
        assertThat(no(shop.ask("hinge tube", "-; 1-1/2 in; 2.88; -", "-"), "lot-0851")
                        .why())
                .contains("bush a bore wants the size it has to come to at most what it is now");
    }

    @Test
    void rustHarmAndBadGoodsAreSaid() {
        FitPlan rusty =
                shop.ask("rod", ".112 in; 2-1/4 in; -; 4-36", "-").plans().getFirst();
        assertThat(rusty.lot()).isEqualTo("lot-0795");
        assertThat(rusty.mind()).anyMatch(line -> line.startsWith("rusty"));
        List<FitPlan> springs = shop.ask("needle spring", "0.9; 35; -; -", "-").plans();
        assertThat(springs.getLast().lot()).isEqualTo("lot-0759");
        assertThat(springs.getLast().mind()).anyMatch(line -> line.contains("avoid"));
    }

    @Test
    void aPartsHornIsNamedOnce() {
        FitPlan onHorn = shop.ask("rod", "2.50; 105; -; M2.5x0.45", "-").plans().getFirst();
        assertThat(onHorn.mind())
                .filteredOn(line -> line.contains("parts horn"))
                .hasSize(1);
    }

    @Test
    void whatHasToBeMeasuredFirstIsSaidInWords() {
        FitPlan best = shop.ask("pivot", "-; 8; -; M2.6x0.45; nose=headed-tapered", "-")
                .plans()
                .getFirst();
        assertThat(best.askFirst())
                .singleElement()
                .asString()
                .contains("the stock left at the nose", "the diameter of the seat");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '>',
            quoteCharacter = '~',
            value = {
                "rod > .112; 60; -; 4-36 > - > write .112 in for inches",
                "washer > 8; -; 3.5; - > - > any of 5: Resonator washer",
                "rod > 2.5; 60; -; - > Quarterdeck > may be any of",
                "rod > 2.5; 60; -; - > Halverick Quarterdek, alto > perhaps Halverick Quarterdeck, alto (m-halverick-quarterdeck-alto) is meant",
                "neck > 24.4; 10; -; - > - > has no length",
            })
    void whatIsUnclearIsAskedInOneLine(String kind, String asked, String model, String says) {
        assertThatThrownBy(() -> shop.ask(kind, asked, model))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(says)
                .message()
                .doesNotContain("\n");
    }

    private static Refused no(FitAnswer answer, String lot) {
        return answer.refused().stream()
                .filter(refused -> refused.lot().equals(lot))
                .findFirst()
                .orElseThrow();
    }
}
