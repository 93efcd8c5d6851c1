package hornbook.shared.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.shared.thread.ThreadAnswer.Apart;
import hornbook.shared.thread.ThreadAnswer.LikelyThread;
import hornbook.shared.thread.ThreadAnswer.LookAlike;
import hornbook.shared.thread.ThreadAnswer.NextUp;
import hornbook.shared.thread.ThreadAnswer.NotUp;
import hornbook.shared.thread.ThreadAnswer.Stripped;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings against ISO 261, ISO 965-1, ASME B1.1 and BS 93; the two screws of the demonstration's sixth story. */
class WhichThreadTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            diameter 2.95, turns 5, over 3.0 mm      | M3x0.6      | 0.9
            diameter 2.93, pitch 0.5, form 60        | M3x0.5      | 0.95
            diameter .096", tpi 48                   | 3-48 UNC    | 0.9
            diameter .108 in, tpi 40                 | 4-40 UNC    | 0.9
            diameter 2.75, tpi 36                    | 4-36 old-ASME | 0.9
            diameter 2.58±0.01 mm, pitch 0.45±0.01 mm, form 60 | M2.6x0.45 | 0.7
            diameter 4.74, tpi 32                    | 10-32 UNF   | 0.5
            hole 2.53, pitch 0.5, form 60            | M3x0.5      | 0.8
            diameter 5.88, pitch 1.0, form 47.5      | 0 BA        | 0.9
            diameter 3.07, tpi 40, form 60           | 5-40 UNC    | 0.9
            """)
    void namesTheThread(String readings, String designation, double atLeast) {
        LikelyThread first = Ask.ask(readings).threads().getFirst();
        assertThat(first.designation()).isEqualTo(designation);
        assertThat(first.probability()).isGreaterThanOrEqualTo(atLeast);
    }

    /** Diameter and pitch cannot part these (BS 93, BS 84, Loewenherz): a tie, not a winner. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            diameter 2.95, turns 5, over 2.5 mm | M3x0.5     | S3
            diameter 5.90, pitch 1.0            | M6x1       | 0 BA
            diameter 1.66, pitch 0.35           | M1.7x0.35  | 10 BA
            diameter 6.25, tpi 20               | 1/4-20 UNC | 1/4-20 BSW
            diameter 3.09, tpi 40               | 5-40 UNC   | 1/8-40 BSW
            hole 2.53, pitch 0.5                | M3x0.5     | S3
            """)
    void twinsAreTiedUntilTheAngleIsSeen(String readings, String one, String other) {
        ThreadAnswer answer = Ask.ask(readings);
        assertThat(probability(answer, one))
                .isEqualTo(probability(answer, other), within(1e-9))
                .isGreaterThan(0.2);
        assertThat(answer.threads().getFirst().note().orElseThrow()).contains("only the angle");
        assertThat(answer.apart().stream()
                        .filter(pair -> names(pair, one, other))
                        .findFirst()
                        .orElseThrow())
                .satisfies(pair -> assertThat(pair.withGaugeInHand()).isFalse())
                .satisfies(pair -> assertThat(pair.look()).contains("angle"));
    }

    private static boolean names(Apart pair, String one, String other) {
        return pair.one().equals(one) && pair.other().equals(other)
                || pair.one().equals(other) && pair.other().equals(one);
    }

    private static double probability(ThreadAnswer answer, String designation) {
        return answer.threads().stream()
                .filter(thread -> thread.designation().equals(designation))
                .mapToDouble(LikelyThread::probability)
                .sum();
    }

    @Test
    void equalThreadsShowTheCurrentStandardFirst() {
        assertThat(Ask.ask("diameter 2.95, turns 5, over 2.5 mm").threads())
                .extracting(LikelyThread::designation)
                .startsWith("M3x0.5", "S3");
    }

    /** The story: the guard screw M3x0.5 turns in twice and binds in the post M3x0.6. */
    @Test
    void saysWhatStartsAndBinds() {
        Optional<Double> turns = Ask.ask("diameter 2.95, turns 5, over 3.0 mm").lookAlikes().stream()
                .filter(pair -> pair.screw().equals("M3x0.5") && pair.hole().equals("M3x0.6"))
                .findFirst()
                .flatMap(LookAlike::bindsAfterTurns);
        assertThat(turns).contains(2.0);
    }

    /** Trade notes, pairs that fool people: the worst one drifts 0.04 mm over 5 mm of thread. */
    @Test
    void saysWhenTryingDoesNotTell() {
        ThreadAnswer answer = Ask.ask("diameter 2.44, tpi 56");
        assertThat(answer.lookAlikes())
                .filteredOn(
                        pair -> pair.screw().equals("3-56 UNF") && pair.hole().equals("M2.5x0.45"))
                .singleElement()
                .satisfies(pair -> assertThat(pair.bindsAfterTurns()).isEmpty());
        assertThat(answer.apart())
                .anySatisfy(pair -> assertThat(pair.withGaugeInHand()).isFalse());
        assertThat(answer.threads().getFirst().probability()).isLessThan(0.8);
    }

    /** Worked example of the trade notes: M4 hole stripped to 3.90, 1.2 mm of wall at M4. */
    @Test
    void findsTheNextSizeForAStrippedThumbHook() {
        ThreadAnswer answer = Ask.ask("hole 3.90, pitch 0.7, wall 1.25");
        NextUp first = answer.nextUp().getFirst();
        assertThat(first.designation()).isEqualTo("M4.5x0.75");
        assertThat(first.percent()).isEqualTo(61.6);
        assertThat(first.drill()).isEmpty();
        assertThat(first.wallLeft().orElseThrow().mm()).isEqualTo(0.95);
        assertThat(why(answer, "10-32 UNF")).contains("0.787 mm of wall");
        assertThat(why(answer, "M5x0.8")).contains("0.7 mm of wall");
        assertThat(why(answer, "8-32 UNC")).contains("25.8 %");
        assertThat(answer.stripped()).extracting(Stripped::designation).contains("M4x0.7");
    }

    /** Worked example of the trade notes: 3-48 post stripped to 2.45, on a 2.743 rod. */
    @Test
    void offersNoThreadLargerThanTheRod() {
        ThreadAnswer answer = Ask.ask("hole 2.45, tpi 48, through .108\"");
        assertThat(answer.nextUp()).isEmpty();
        assertThat(why(answer, "4-48 UNF")).contains("larger than the 2.743 mm");
        assertThat(why(answer, "M2.6x0.45")).contains("25.7 %");
        assertThat(answer.stripped()).extracting(Stripped::designation).contains("3-48 UNC");
    }

    private static String why(ThreadAnswer answer, String designation) {
        return answer.notUp().stream()
                .filter(no -> no.designation().equals(designation))
                .map(NotUp::why)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void namesTheNearestWhereNothingFits() {
        ThreadAnswer answer = Ask.ask("diameter 5, pitch 3");
        assertThat(answer.threads()).isEmpty();
        assertThat(answer.nearest()).hasSize(3);
        assertThat(answer.nextUp()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            pitch 0.5                              | --diameter
            diameter 2.95, hole 2.5                | one of the two
            diameter 2.95, pitch 0.5, tpi 48       | one way
            diameter 2.95, turns 5                 | --turns with --over
            diameter 2.95, turns 0, over 3         | --turns: “0” is not a number
            diameter 2.95, turns 2.5, over 3       | not a whole number
            diameter 2.95, tpi many                | --tpi: “many”
            diameter 2.95, pitch 0                 | --pitch: “0” is nought
            diameter thick, pitch 0.5              | --diameter: “thick”
            diameter 2.95, pitch 0.5, form 200     | --form
            diameter 2.95, pitch 0.5, wall x       | --wall
            """)
    void refusesInOneLineThatNamesTheOption(String options, String why) {
        assertThat(Ask.read(options).refusal().orElseThrow()).contains(why).doesNotContain("\n");
    }
}
