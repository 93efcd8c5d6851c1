package hornbook.shared.measure;

import static hornbook.shared.measure.Rows.READER;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Writings of designations; the coarse pitches are those of ISO 261 and ISO 262. */
class ThreadReadingTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            3-48            | 3-48 UNC
            3/48            | 3-48 UNC
            #3-48           | 3-48 UNC
            3-48 UNC        | 3-48 UNC
            3-48unc         | 3-48 UNC
            no. 3-48        | 3-48 UNC
            No 3 - 48       | 3-48 UNC
            3 x 48          | 3-48 UNC
            3-48 tpi        | 3-48 UNC
            3 48            | 3-48 UNC
            #3 UNC          | 3-48 UNC
            3-48 NC         | 3-48 UNC
            3-48 screw      | 3-48 UNC
            3-56            | 3-56 UNF
            M2.5            | M2.5x0.45
            M2,5x0,45       | M2.5x0.45
            M2,5x0,45 tap   | M2.5x0.45
            M2.5 x .45      | M2.5x0.45
            M2.5×0.45       | M2.5x0.45
            m2.5-0.45       | M2.5x0.45
            M 3 x 0.5       | M3x0.5
            M3              | M3x0.5
            M3x0.50 mm      | M3x0.5
            M3 fine         | M3x0.35
            M3x0.6          | M3x0.6
            3 x 0.6         | M3x0.6
            2.6x0.45        | M2.6x0.45
            M2.6            | M2.6x0.45
            M5.5            | M5.5x0.5
            6BA             | 6 BA
            6 BA            | 6 BA
            6 B.A.          | 6 BA
            No. 6 BA        | 6 BA
            BA 6            | 6 BA
            4-36            | 4-36 old-ASME
            4-36 old-ASME   | 4-36 old-ASME
            4-36 old ASME   | 4-36 old-ASME
            1/8-40 BSW      | 1/8-40 BSW
            1/8 BSW         | 1/8-40 BSW
            1/8" Whitworth  | 1/8-40 BSW
            W 1/8           | 1/8-40 BSW
            1/8x40 ME       | 1/8-40 ME
            1/4" x 26 BSF   | 1/4-26 BSF
            1/4-20          | 1/4-20 UNC
            1/4-20 BSW      | 1/4-20 BSW
            S3              | S3
            s 2.6           | S2.6
            Loewenherz 3    | S3
            """)
    void readsEveryWriting(String text, String designation) {
        assertThat(READER.thread(text).map(Thread::designation)).isEqualTo(Reading.read(designation));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            3-84       | 3-56 UNF, 3-48 UNC
            M3x0.55    | M3x0.6, M3x0.5
            17 BA      | 16 BA
            4-36 UNC   | 4-36 old-ASME
            M9         | M8
            M2.4       | M2.5x0.45
            S9         | S8
            #3         | no thread designation
            10 UNS     | does not say its pitch: it can be 10-28 UNS, 10-36 UNS, 10-40 UNS
            M0         | nearest
            M3x0       | no thread designation
            3-0        | no thread designation
            M2.5x45    | nearest
            3 mm       | no thread designation
            1/0-40     | no thread designation
            6 BAA      | near: 6 BA
            """)
    void refusesWhatIsNoThreadAndNamesTheNearest(String text, String why) {
        assertThat(READER.thread(text).refusal().orElseThrow()).contains(why, text);
    }

    @Test
    void keepsEveryMeaningOfAWritingThatNamesNoStandard() {
        assertThat(READER.threads("1/8-40").orThrow())
                .extracting(Thread::designation)
                .containsExactly("1/8-40 BSW", "1/8-40 ME");
        assertThat(READER.threads("1/4-20").orThrow())
                .extracting(Thread::designation)
                .containsExactly("1/4-20 UNC", "1/4-20 BSW");
    }
}
