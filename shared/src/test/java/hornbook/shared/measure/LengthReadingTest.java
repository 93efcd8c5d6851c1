package hornbook.shared.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 1 in = 25.4 mm exactly; drills ASME B94.11M, AWG ASTM B258, SWG BS 3737, music wire as used with ASTM A228. */
class LengthReadingTest {
    private static final SizeReader READER = Rows.READER;

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            2.5                 | 2500000
            2,5 mm              | 2500000
            2,5mm               | 2500000
            .5                  | 500000
            2.5 MM              | 2500000
            2.5 millimeters     | 2500000
            ⌀ 2.5 mm            | 2500000
            2.5 mm dia.         | 2500000
            1.2 cm              | 12000000
            25 µm               | 25000
            25 um               | 25000
            25 microns          | 25000
            .108"               | 2743200
            .108 in             | 2743200
            0,108 in.           | 2743200
            .108″               | 2743200
            108 thou            | 2743200
            7/64"               | 2778125
            7/64                | 2778125
            7⁄64 in             | 2778125
            7/64" drill         | 2778125
            7/64 drill          | 2778125
            7 64ths             | 2778125
            1-1/4 in            | 31750000
            1 1/4"              | 31750000
            1¼ in               | 31750000
            3-1/2"              | 88900000
            1/3 in              | 8466667
            1/2 mm              | 500000
            #40                 | 2489200
            #40 drill           | 2489200
            no 47 drill         | 1993900
            No. 47 drill        | 1993900
            number 47 drill     | 1993900
            drill #47           | 1993900
            F drill             | 6527800
            f drill             | 6527800
            letter F            | 6527800
            18 AWG              | 1023696
            AWG 18              | 1023696
            18 awg wire         | 1023696
            4/0 AWG             | 11684000
            20 SWG              | 914400
            20 s.w.g.           | 914400
            5/0 SWG             | 10972800
            music wire 18       | 1041400
            music wire no. 18   | 1041400
            18 music wire       | 1041400
            Stubs steel 42      | 2336800
            drill rod 42        | 2336800
            BWG 18              | 1244600
            US standard 16      | 1587500
            2.743 mm (.108 in)  | 2743000
            """)
    void readsEveryForm(String text, long nanometres) {
        assertThat(READER.length(text, LengthUnit.MILLIMETRE)).isEqualTo(Reading.read(new Length(nanometres)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            3..5mm        | range
            2.72..2.74 mm | range
            8-25 mm       | range
            2.95±0.02 mm  | doubt
            5/0"          | divides by nought
            1/0           | divides by nought
            -2.5 mm       | below nought
            −2.5          | below nought
            NaN           | is no size
            Infinity      | is no size
            1e9           | is no size
            1000000 mm    | over 100 m
            99999999999999999999999999999999999999999 mm | digits
            2 mm 3 in     | more than one size
            2.5 ft        | unit
            2.5 mm long-ish | is no size
            5/7           | usual fraction
            1-5/4 in      | not below one
            3 drill       | #3 drill or 3 mm drill
            18 gauge      | AWG 18 is 1.024 mm
            stubs 42      | iron or Stubs steel
            #81           | #1 to #80
            70 AWG        | AWG 4/0 to AWG 44
            2.743 mm (.120 in) | do not agree
            2.5.3 mm      | is no size
            1,234.5 mm    | is no size
            mm            | is no size
            no 47         | is no size
            3-48 | is no size
            3-48 UNC | is no size
            """)
    void refusesInOneLineThatQuotesTheText(String text, String why) {
        String reason = READER.length(text, LengthUnit.MILLIMETRE).refusal().orElseThrow();
        assertThat(reason).contains(why).startsWith("“").doesNotContain("\n");
        assertThat(reason)
                .contains(Writing.plain(text)
                        .substring(0, Math.min(8, Writing.plain(text).length())));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2.95±0.02 mm        | 2930000 | 2950000 | 2970000
            2.95 ± 0.02         | 2930000 | 2950000 | 2970000
            2.95+-0.02 mm       | 2930000 | 2950000 | 2970000
            2.95 mm +/- 0.02 mm | 2930000 | 2950000 | 2970000
            .108±.001 in        | 2717800 | 2743200 | 2768600
            2.72..2.74 mm       | 2720000 | 2730000 | 2740000
            2.72 mm..2.74 mm    | 2720000 | 2730000 | 2740000
            2.72…2.74 mm        | 2720000 | 2730000 | 2740000
            2.72 to 2.74 mm     | 2720000 | 2730000 | 2740000
            2.72–2.74 mm        | 2720000 | 2730000 | 2740000
            .107...109 in       | 2717800 | 2743200 | 2768600
            8-25 mm             | 8000000 | 16500000 | 25000000
            1-1/4 in            | 31750000 | 31750000 | 31750000
            3..5mm              | 3000000 | 4000000 | 5000000
            """)
    void readsDoubtAndRange(String text, long low, long nominal, long high) {
        Measured read = READER.measured(text, LengthUnit.MILLIMETRE).orThrow();
        assertThat(new long[] {
                    read.low().nanometres(),
                    read.nominal().nanometres(),
                    read.high().nanometres()
                })
                .containsExactly(low, nominal, high);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2.74..2.72 mm  | downwards
            2.95 mm ± .001 in | two units
            0.01±0.02 mm   | larger than the size
            2.95± mm       | is no size
            2..            | is no size
            """)
    void refusesImpossibleDoubtsAndRanges(String text, String why) {
        assertThat(READER.measured(text, LengthUnit.MILLIMETRE).refusal().orElseThrow())
                .contains(why);
    }

    @Test
    void aBareNumberTakesTheUnitGiven() {
        assertThat(READER.length("108", LengthUnit.THOU).orThrow()).isEqualTo(Length.ofInches("0.108"));
        assertThat(READER.length(".108", LengthUnit.INCH).orThrow()).isEqualTo(Length.ofInches("0.108"));
        assertThat(READER.length("2 mm", LengthUnit.INCH).orThrow()).isEqualTo(Length.ofMillimetres("2"));
    }

    @Test
    void readsBackWhatItShows() {
        new Random(7).longs(2_000, 0, 80_000_000).mapToObj(Length::new).forEach(length -> {
            Length back = READER.length(length.toString(), LengthUnit.INCH).orThrow();
            assertThat(back.minus(length).abs().nanometres())
                    .as(length.toString())
                    .isLessThanOrEqualTo(500);
        });
    }

    @Test
    void neverThrowsOnAnyText() {
        String signs = "0123456789..,,//--##\"'±+…  mMiInNtThHoOuUuAWGSdrilBFx×½µ()=;é\u0000";
        Random random = new Random(11);
        for (int round = 0; round < 5_000; round++) {
            String text = random.ints(random.nextInt(14), 0, signs.length())
                    .mapToObj(at -> String.valueOf(signs.charAt(at)))
                    .collect(Collectors.joining());
            assertThat(READER.length(text, LengthUnit.MILLIMETRE)).isNotNull();
            assertThat(READER.measured(text, LengthUnit.INCH)).isNotNull();
            assertThat(READER.thread(text)).isNotNull();
            assertThat(READER.dimensions(text)).isNotNull();
            assertThat(READER.mentions(text)).isNotNull();
        }
    }
}
