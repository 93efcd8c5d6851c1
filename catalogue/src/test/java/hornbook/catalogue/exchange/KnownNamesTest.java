package hornbook.catalogue.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.entry.Catalogue;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a lot's title says it is, as repairers write titles (the titles are ours); what is doubtful stays text. */
class KnownNamesTest {
    private static final KnownNames NAMES = new KnownNames(Catalogue.shipped());

    @ParameterizedTest
    @CsvSource({
        "needle spring 0.9 mm, part-needle-spring",
        "blued needle springs, part-needle-spring",
        "tan pad, sup-pad-single",
        "tan pads 31 mm, sup-pad-single",
        "pad 31 mm tan, sup-pad-single",
        "M3x0.5 guard screw, part-guard-screw",
        "3-48 pivot screws, part-pivot-screw",
        "hinge rod 2.38, part-hinge-rod",
        "sheet cork 1/16, sup-cork-sheet",
        "silver steel rod 2 mm, ",
        "rubber bumpers 9 mm, ",
        "strap with two posts, ",
        "washer under resonator nut 6 mm, ",
        "low B touch, ",
    })
    void aTitleSaysItsKindOrNone(String title, String kind) {
        assertThat(NAMES.thing(title).orElse(null)).isEqualTo(kind);
    }
}
