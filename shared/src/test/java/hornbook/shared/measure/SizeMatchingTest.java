package hornbook.shared.measure;

import static hornbook.shared.measure.Rows.READER;
import static hornbook.shared.measure.Rows.SIZES;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which sizes stand in a text, and which sizes are one. */
class SizeMatchingTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', nullValues = "-", textBlock = """
            2.74 mm rod                     | 2.74 mm
            rod .108                        | .108
            rod .108"                       | .108"
            rods 2.743 mm, 88 mm long       | 2.743 mm; 88 mm
            pivot 3-48 headed               | 3-48
            3/48 pivots                     | 3/48
            7/64 in rod                     | 7/64 in
            cork 7/32                       | 7/32
            cork 1/16"                      | 1/16"
            6/32 screw                      | 6/32
            M3 guard screw                  | M3
            M2,5x0,45 tap                   | M2,5x0,45
            M 3 x 0.5 die                   | M 3 x 0.5
            2.6 x 0.45 die                  | 2.6 x 0.45
            flat spring 55 x 4 x 0.5        | 0.5
            flat spring 4 x 0.5 mm          | 0.5 mm
            no 47 drill                     | no 47 drill
            #40 drill and F drill           | #40 drill; F drill
            take a drill and an awl         | -
            music wire 18                   | music wire 18
            20 SWG brass                    | 20 SWG
            6 BA screw                      | 6 BA
            3 in the drawer                 | -
            1/4-20 thumb screw              | 1/4-20
            S3 or M3x0.5                    | S3; M3x0.5
            serial 403367                   | -
            done 2022-10-24                 | -
            lot-0178 in d-card-r3c2         | -
            F# key, G#4                     | -
            TAN 48-50                       | -
            pad 38.5                        | 38.5
            between 2.72..2.74 mm           | 2.72..2.74 mm
            2.72 mm..2.74 mm                | 2.72 mm..2.74 mm
            2.95 mm ± 0.02 mm               | 2.95 mm ± 0.02 mm
            flat spring 4 x 0.5             | 0.5
            a thread of 4 x 0.5             | 4 x 0.5
            1½ in tube                      | 1½ in
            1 1/4 in tube, 5/8" cork        | 1 1/4 in; 5/8"
            #3-48 and #4-40                 | #3-48; #4-40
            no. 3-48 screw                  | no. 3-48
            size=8-25 mm;length=10.4 mm     | 8-25 mm; 10.4 mm
            25.4 MM, 3,5mm                  | 25.4 MM; 3,5mm
            a.w.g. 18 wire                  | a.w.g. 18
            1/8 BSW; 1/8-40 ME; 5 BA        | 1/8 BSW; 1/8-40 ME; 5 BA
            in 1951. Then 12 pads           | -
            B-4                             | -
            Series 18, A4 = 440             | -
            """)
    void findsTheSizesInAText(String text, String pieces) {
        String found = READER.mentions(text).stream().map(SizeMention::text).collect(Collectors.joining("; "));
        assertThat(found).isEqualTo(pieces == null ? "" : pieces);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            2.74 mm      | .108 in       | true
            .108"        | 2.743 mm      | true
            108 thou     | 2.74          | true
            7/64"        | 2.78 mm       | true
            #40 drill    | .098 in       | true
            F drill      | 6.53 mm       | true
            M3           | M3x0.5        | true
            3/48         | 3-48 UNC      | true
            1/8-40       | 1/8-40 BSW    | true
            2.7..2.8 mm  | 2.743 mm      | true
            2.74 mm      | 2.75 mm       | false
            2.74 mm      | .109 in       | false
            3-48         | 3-56          | false
            3-48         | 3.48 mm       | false
            M3           | 3 mm          | false
            M3           | M3x0.6        | false
            M3           | S3            | false
            M6           | 0 BA          | false
            #40 drill    | 40 mm         | false
            #40 drill    | 40 thou       | false
            18 AWG       | music wire 18 | false
            1/4-20 UNC   | 1/4 in        | false
            """)
    void sizesAreOneOnlyWithinTheTolerance(String one, String two, boolean same) {
        assertThat(meets(one, two)).isEqualTo(same);
        assertThat(meets(two, one)).isEqualTo(same);
    }

    private static boolean meets(String one, String two) {
        return only(one).same(only(two));
    }

    private static Size only(String text) {
        List<SizeMention> found = READER.mentions(text);
        assertThat(found).as(text).hasSize(1);
        return found.getFirst().size();
    }

    /** The short way of taking "10.4 mm" gives what the reader gives. */
    @Test
    void plainMillimetresAreReadAsTheReaderReadsThem() {
        for (String text : List.of("0 mm", "7 mm", "10.4 mm", "2,7432mm", "2.743200 MM", "12345.000001 mm")) {
            Length read = READER.length(text, LengthUnit.INCH).orThrow();
            assertThat(PlainMillimetres.at(text, 0).orElseThrow().size())
                    .isEqualTo(new Size.Plain(Measured.single(read)));
        }
    }

    /** A size of the tables: how it is written, and what it truly is. */
    private record Known(String text, String thread, long nanometres) {
        boolean is(Known other) {
            boolean both = thread.isEmpty() && other.thread.isEmpty();
            return both ? Math.abs(nanometres - other.nanometres) <= 5_000 : thread.equals(other.thread);
        }
    }

    private static List<Known> everySize() {
        List<Known> all = new ArrayList<>();
        SIZES.threads().threads().forEach(t -> {
            all.add(new Known(t.designation(), t.designation(), 0));
            all.add(new Known(t.major().inMillimetres(), "", rounded(t.major(), 1_000)));
        });
        SIZES.drills()
                .drills()
                .forEach(d -> all.add(new Known(d.text(), "", d.diameter().nanometres())));
        SIZES.gauges()
                .rows()
                .forEach(g -> all.add(new Known(g.text(), "", g.size().nanometres())));
        SIZES.drills()
                .standard()
                .forEach(d -> all.add(new Known(d.diameter().inInches(), "", rounded(d.diameter(), 2_540))));
        for (int number = 1; number <= 80; number++) {
            all.add(new Known(number + " mm", "", number * 1_000_000L));
            all.add(new Known(number + " thou", "", number * 25_400L));
        }
        return all;
    }

    private static long rounded(Length length, long step) {
        return Math.round((double) length.nanometres() / step) * step;
    }

    /** No false friend and no lost friend among threads.csv, drills.csv and gauges.csv, over all ordered pairs. */
    @Test
    void noSizeOfTheTablesFindsAnotherByAccident() {
        List<Known> all = everySize();
        List<Size> read = all.stream().map(known -> only(known.text())).toList();
        List<String> wrong = new ArrayList<>();
        for (int a = 0; a < all.size(); a++) {
            for (int b = 0; b < all.size(); b++) {
                if (read.get(a).same(read.get(b)) != all.get(a).is(all.get(b))) {
                    wrong.add(all.get(a).text() + " / " + all.get(b).text());
                }
            }
        }
        assertThat(all.size()).isGreaterThan(900);
        assertThat(wrong).isEmpty();
    }
}
