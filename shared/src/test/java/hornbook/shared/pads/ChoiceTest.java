package hornbook.shared.pads;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.measure.PadSize;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The choice of batches for horns costs as little as the best of all choices, each filled by the Hungarian method. */
class ChoiceTest {
    private static final List<String> CUPS = List.of("cup-b", "cup-a", "cup-f", "cup-e", "cup-low-b", "cup-oct-neck");

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void costsAsLittleAsTheBestOfAllChoices(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 12; trial++) {
            List<Cup> cups = cups(random);
            List<Seat> seats = new ArrayList<>();
            cups.forEach(cup -> {
                int ruled = HalfSize.ruled(cup.diameter(), PadSize.Tie.UP).orElseThrow();
                seats.add(new Seat(ruled, HalfSize.off(cup.diameter(), ruled)));
            });
            List<Tray> trays = trays(random);
            Choice.Result found = Choice.best(seats, trays, new Horns(Goods.PADS, cups, seats, trays).decisions());
            assertThat(found.proven()).isTrue();
            assertThat(found.score()).isEqualTo(least(cups, seats, trays));
        }
    }

    private static List<Cup> cups(SplittableRandom random) {
        List<Cup> cups = new ArrayList<>();
        for (String job : List.of("j-1", "j-2")) {
            for (String cup : CUPS) {
                BigDecimal mm = BigDecimal.valueOf(200 + random.nextInt(20), 1);
                cups.add(new Cup(cup, mm, job, null, null));
            }
        }
        return cups;
    }

    /** Tan in two thicknesses and brown: two looks, three batches, all of the usual thickness. */
    private static List<Tray> trays(SplittableRandom random) {
        return List.of(tray("tan", "4.0", random), tray("tan", "4.2", random), tray("brown", "4.0", random));
    }

    private static Tray tray(String colour, String thickness, SplittableRandom random) {
        Tray tray = new Tray(new Tray.Batch("sup-pad-single", "leather", colour, new BigDecimal(thickness)));
        for (int size = 39; size < 45; size++) {
            tray.add(size, Lots.pad("lot-" + colour + thickness + size, size, thickness, random.nextInt(3)), true);
        }
        return tray;
    }

    /** Every cup group on every tray; a horn's groups, but for the octave pads, are of one look. */
    private static Score least(List<Cup> cups, List<Seat> seats, List<Tray> trays) {
        List<List<Integer>> groups = new ArrayList<>();
        for (int horn = 0; horn < 2; horn++) {
            int first = horn * CUPS.size();
            groups.addAll(List.of(
                    List.of(first, first + 1), List.of(first + 2, first + 3), List.of(first + 4), List.of(first + 5)));
        }
        Score least = new Score(Integer.MAX_VALUE, 0, 0);
        Map<Long, Score> known = new HashMap<>();
        int[] tray = new int[groups.size()];
        for (int code = 0; code < (int) Math.pow(trays.size(), groups.size()); code++) {
            for (int g = 0, rest = code; g < tray.length; g++, rest /= trays.size()) {
                tray[g] = rest % trays.size();
            }
            if (oneLook(tray, 0) && oneLook(tray, 4)) {
                Score score = score(groups, tray, seats, trays, known);
                least = score.compareTo(least) < 0 ? score : least;
            }
        }
        return least;
    }

    private static boolean oneLook(int[] tray, int first) {
        return Arrays.stream(tray, first, first + 3)
                        .map(t -> t == 2 ? 1 : 0)
                        .distinct()
                        .count()
                == 1;
    }

    private static Score score(
            List<List<Integer>> groups, int[] tray, List<Seat> seats, List<Tray> trays, Map<Long, Score> known) {
        Score sum = Score.NOTHING;
        for (int t = 0; t < trays.size(); t++) {
            List<Seat> mine = new ArrayList<>();
            long who = t;
            for (int g = 0; g < tray.length; g++) {
                if (tray[g] == t) {
                    groups.get(g).forEach(cup -> mine.add(seats.get(cup)));
                    who |= 16L << g;
                }
            }
            int[] stock = trays.get(t).stock();
            @Nullable Score part = known.get(who);
            if (part == null) {
                part = Judge.least(mine, stock);
                known.put(who, part);
            }
            sum = sum.plus(part);
        }
        return sum;
    }
}
