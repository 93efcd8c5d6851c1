package hornbook.shared.pads;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Equal in cost to the Hungarian method on seeded random problems (JGraphT, see {@link Judge}). */
class SweepTest {
    /** Many sizes or few, pads scarce or ample: scarce ones decide who goes without, ample ones who moves. */
    @ParameterizedTest
    @CsvSource({"1, 3, 4, 0.6", "2, 6, 9, 0.9", "3, 8, 14, 1.0", "4, 4, 20, 0.8", "5, 12, 12, 1.5", "6, 2, 12, 1.1"})
    void costsAsLittleAsTheHungarianMethod(long seed, int sizes, int cups, double padsPerCup) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 150; trial++) {
            List<Seat> seats = seats(random, sizes, cups);
            int[] stock = stock(random, sizes, (int) Math.round(cups * padsPerCup));
            Sweep.Filled filled = Sweep.fill(seats, stock);
            assertThat(filled.score()).isEqualTo(Judge.least(seats, stock));
            assertThat(worth(seats, filled.sizes(), stock)).isEqualTo(filled.score());
        }
    }

    static List<Seat> seats(SplittableRandom random, int sizes, int cups) {
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < cups; i++) {
            seats.add(new Seat(40 + random.nextInt(sizes), random.nextInt(-250, 250)));
        }
        return seats;
    }

    static int[] stock(SplittableRandom random, int sizes, int pads) {
        int[] stock = new int[60];
        for (int i = 0; i < pads; i++) {
            stock[39 + random.nextInt(sizes + 2)]++;
        }
        return stock;
    }

    /** What the sizes handed out are worth, counted anew; fails where one is handed out twice or too far off. */
    static Score worth(List<Seat> seats, int[] sizes, int[] stock) {
        int[] left = stock.clone();
        Score sum = Score.NOTHING;
        for (int i = 0; i < sizes.length; i++) {
            if (sizes[i] == 0) {
                sum = sum.plus(new Score(1, 0, 0));
                continue;
            }
            int steps = sizes[i] - seats.get(i).ruled();
            assertThat(Math.abs(steps)).isLessThanOrEqualTo(1);
            assertThat(left[sizes[i]]--).isPositive();
            sum = sum.plus(new Score(0, Math.abs(steps), Math.abs(seats.get(i).off() - 500L * steps)));
        }
        return sum;
    }

    @Test
    void noCupsCostNothing() {
        assertThat(Sweep.fill(List.of(), new int[10]).score()).isEqualTo(Score.NOTHING);
    }

    @Test
    void aChainOfLoansServesTheLastCup() {
        // Ruled 40 to 43, one pad each of 39 to 42: all but nobody must move down one for the last to be served.
        List<Seat> seats = List.of(new Seat(40, 0), new Seat(41, 0), new Seat(42, 0), new Seat(43, 0));
        int[] stock = new int[60];
        for (int size = 39; size < 43; size++) {
            stock[size] = 1;
        }
        assertThat(Sweep.fill(seats, stock).sizes()).containsExactly(39, 40, 41, 42);
    }
}
