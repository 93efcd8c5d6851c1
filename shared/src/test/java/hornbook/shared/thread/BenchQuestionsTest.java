package hornbook.shared.thread;

import static hornbook.shared.thread.Ask.ask;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.shared.thread.ThreadAnswer.LikelyThread;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Questions as a repairer asks them, each answer worked out by hand from the standards' tables: ISO 261, 262 and 965-1,
 * ASME B1.1, BS 93, BS 84 and Machinery's Handbook (threads.csv, tapdrills.csv and clearance.csv name the row).
 */
class BenchQuestionsTest {
    private static LikelyThread first(String asked) {
        return ask(asked).threads().getFirst();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // A good screw reads under its nominal size: ISO 965-1 6g, M3x0.6 2.853 to 2.978 mm.
                "diameter 2.95, turns 5, over 3.0       | M3x0.6      | 0.9",
                "diameter 2.95, turns 5, over 2.5       | M3x0.5      | 0.45",
                // ASME B1.1: 4-40 UNC, .1120 in.
                "diameter .112 in, tpi 40               | 4-40 UNC    | 0.9",
                "diameter .110 in, tpi 48               | 4-48 UNF    | 0.5",
                // ISO 262: M4x0.7; ten turns are 7 mm.
                "diameter 3.9, turns 10, over 7         | M4x0.7      | 0.45",
                // BS 93: 0 BA, 6 mm by 1 mm at 47.5 degrees, where M6x1 has 60.
                "diameter 5.95, pitch 1, form 47.5      | 0 BA        | 0.9",
                // A nut tells its thread by its crests: M3x0.5 6H 2.459 to 2.599 mm.
                "hole 2.5, pitch 0.5                    | M3x0.5      | 0.4",
                // 42 leaves an inch are 0.605 mm: the leaf that fits 0.6 best.
                "diameter 2.9, tpi 42                   | M3x0.6      | 0.9",
                // Worn by 0.1 mm and still known by its pitch.
                "diameter 2.85, pitch 0.5               | M3x0.5      | 0.4",
            })
    void isKnown(String asked, String designation, double atLeast) {
        assertThat(first(asked).designation()).isEqualTo(designation);
        assertThat(first(asked).probability()).isGreaterThan(atLeast);
    }

    /** Look-alikes of thread_pairs.csv: neither calliper nor gauge parts them, and no answer is sure. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "diameter 2.46, pitch 0.45   | 3-56 UNF   | M2.5x0.45",
                "diameter 2.18, tpi 56       | M2.2x0.45  | 2-56 UNC",
                "diameter .110 in, tpi 48    | 4-48 UNF   | 6 BA",
                "diameter 5.95, pitch 1      | M6x1       | 0 BA",
                "diameter 2.95, pitch 0.5    | M3x0.5     | S3",
            })
    void whatCannotBeToldIsSaid(String asked, String one, String other) {
        ThreadAnswer answer = ask(asked);
        assertThat(answer.threads().getFirst().probability()).isLessThan(0.9);
        assertThat(answer.apart()).anySatisfy(pair -> {
            assertThat(List.of(pair.one(), pair.other())).containsExactlyInAnyOrder(one, other);
            assertThat(pair.withGaugeInHand()).isFalse();
        });
    }

    /** Same pitch, crests 0.13 mm apart: ASME B1.1 3-48 .099 in, BS 84 3/32-48 .0938 in. */
    @Test
    void whatACalliperPartsItParts() {
        assertThat(ask("diameter 3/32 in, tpi 48").apart()).singleElement().satisfies(pair -> {
            assertThat(pair.withGaugeInHand()).isTrue();
            assertThat(pair.look()).contains("over the crests");
        });
    }

    /** Machinery's Handbook: percent of thread 100 (3 - 2.9) / (1.299038 x 0.5) = 15.4. */
    @Test
    void aStrippedHoleSaysWhatIsLeft() {
        ThreadAnswer answer = ask("hole 2.9, pitch 0.5, wall 1.2");
        assertThat(answer.threads()).isEmpty();
        assertThat(answer.stripped()).first().satisfies(was -> {
            assertThat(was.designation()).isEqualTo("M3x0.5");
            assertThat(was.percentLeft()).isEqualTo(15.4, within(0.5));
        });
    }

    /** Same formula turned round: 60 in 100 of M3x0.5 want 3 - 0.6 x 1.299038 x 0.5 = 2.610 mm. */
    @Test
    void aTapDrillForAPercentage() {
        assertThat(ask("diameter 2.95, pitch 0.5, percent 60").tapDrills())
                .filteredOn(drill -> drill.designation().equals("M3x0.5"))
                .first()
                .satisfies(drill -> assertThat(drill.diameter().mm()).isEqualTo(2.610, within(0.02)));
    }

    /** A reading of the nominal size is over what a standard allows by no more than a calliper errs: it is not "worn". */
    @Test
    void aScrewAtItsNominalSizeIsNotCalledWorn() {
        assertThat(first("diameter .112 in, tpi 40").note()).isEmpty();
        assertThat(first("diameter 2.6, tpi 40").note())
                .hasValueSatisfying(note -> assertThat(note).contains("thinner than a good one: worn"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "diameter 400             | thicker than any thread in the tables, which end at 8 mm",
                "diameter -3, pitch 0.5   | below nought",
                "diameter 0, pitch 0.5    | nought",
                "diameter 3, turns 5      | give the pitch one way",
                "diameter 3, tpi 50.8     | not a whole number",
                "diameter 3 mm in, pitch .5 | no size",
                "hole 3, diameter 3       | one of the two",
            })
    void whatCannotBeIsOneClearLine(String asked, String told) {
        assertThat(Ask.read(asked).refusal())
                .hasValueSatisfying(why -> assertThat(why).contains(told).hasLineCount(1));
    }

    @Test
    void theTablesEndAtEightMillimetres() {
        assertThat(Ask.SIZES.threads().threads().stream()
                        .mapToDouble(t -> t.major().mm())
                        .max())
                .hasValue(8);
    }
}
