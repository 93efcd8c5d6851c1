package hornbook.catalogue.diagnose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CheckOrderTest {
    private static List<String> ids(List<Check> checks) {
        return CheckOrder.of(checks, Set.of()).stream()
                .map(choice -> choice.check().id())
                .toList();
    }

    /**
     * Kleinberg and Tardos, Algorithm Design (2005), ch. 4, exercise 13: times 1 and 3, weights 10 and 2 give 18 in the
     * right order, 46 in the other. Weights are chances here, so both are divided by 12.
     */
    @Test
    void theTextbookOrderOfTwo() {
        Check first = new Check("first", 10 / 12.0, 1, null, 0);
        Check second = new Check("second", 2 / 12.0, 3, null, 0);
        assertThat(ids(List.of(second, first))).containsExactly("first", "second");
        assertThat(CheckOrder.minutes(List.of(first, second), 0, Set.of())).isCloseTo(18 / 12.0, within(1e-12));
        assertThat(CheckOrder.minutes(List.of(second, first), 0, Set.of())).isCloseTo(46 / 12.0, within(1e-12));
    }

    /** By hand: the lamp pays for itself over two checks (0.6 / 8 a minute) though not over the first (0.3 / 5.5). */
    @Test
    void aSetUpIsWorthWhatAllItsChecksAreWorth() {
        Check lampOne = new Check("lamp-1", 0.3, 2.5, "lamp", 3);
        Check lampTwo = new Check("lamp-2", 0.3, 2.5, "lamp", 3);
        Check look = new Check("look", 0.35, 5, null, 0);
        assertThat(ids(List.of(look, lampOne, lampTwo))).containsExactly("lamp-1", "lamp-2", "look");
        assertThat(OneAhead.order(List.of(look, lampOne, lampTwo))).first().isEqualTo(look);
        assertThat(CheckOrder.of(List.of(look, lampOne, lampTwo), Set.of())
                        .getFirst()
                        .worth())
                .isCloseTo(0.075, within(1e-12));
    }

    @Test
    void aSetUpThatIsReadyCostsNothing() {
        Check lamp = new Check("lamp", 0.3, 2, "lamp", 30);
        Check look = new Check("look", 0.6, 5, null, 0);
        assertThat(CheckOrder.of(List.of(look, lamp), Set.of("lamp")).getFirst().check())
                .isEqualTo(lamp);
        assertThat(CheckOrder.of(List.of(look, lamp), Set.of()).getFirst().check())
                .isEqualTo(look);
    }

    @Test
    void theSearchBySetsIsEveryOrder() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 40; i++) {
            List<Check> checks = Exhaustive.problem(random, 5, true);
            assertThat(Exhaustive.bySets(checks, 0.05)).isCloseTo(Exhaustive.permuted(checks, 0.05), within(1e-9));
        }
    }

    /** A hundred of the trial's problems; no order is quicker, and the rule that looks one check ahead is slower. */
    @Test
    void noOrderIsQuicker() {
        DiagnoseTrial.Result result = DiagnoseTrial.run(100, 20260930);
        assertThat(result.apart().worst()).isLessThan(1e-9);
        assertThat(result.shared().worst()).isLessThan(1e-9);
        assertThat(result.oneAhead().worst()).isGreaterThan(0.01);
    }
}
