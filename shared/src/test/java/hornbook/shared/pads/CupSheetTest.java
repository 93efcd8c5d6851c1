package hornbook.shared.pads;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.exchange.Refusal;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.measure.StandardSizes;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CupSheetTest {
    private static final SizeReader SIZES = StandardSizes.load().reader();

    @TempDir
    Path folder;

    private CupSheet read(String text) throws Exception {
        return CupSheet.read(Files.writeString(folder.resolve("cups.csv"), text), SIZES);
    }

    @Test
    void readsCupsWithAndWithoutWhatMayBeLeftOut() throws Exception {
        CupSheet sheet = read("cup,diameter,job,thickness,rim\ncup-f,31.1,j-1,4.0,26.1\ncup-e,\"32,2 mm\",,,\n");
        assertThat(sheet.refused()).isEmpty();
        assertThat(sheet.cups()).extracting(Cup::named).containsExactly("cup-f of j-1", "cup-e");
        assertThat(sheet.cups().getLast().diameter()).isEqualByComparingTo("32.2");
    }

    @Test
    void anInchIsRead() throws Exception {
        assertThat(read("cup,diameter\na,1.224 in\n").cups().getFirst().diameter())
                .isEqualByComparingTo("31.0896");
    }

    @Test
    void semicolonsOfASpreadsheetAreNamed() throws Exception {
        assertThat(read("cup;diameter\ncup-f;31,2\n").refused())
                .singleElement()
                .satisfies(refusal -> assertThat(refusal.why()).contains("semicolons", "save it with commas"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cup-f,wide,j-1,4.0|diameter",
                "cup-f,,j-1,4.0|diameter",
                ",31.1,j-1,4.0|cup",
                "cup-f,311,j-1,4.0|diameter",
                "cup-f,5.7,j-1,4.0|diameter",
                "cup-f,-31.1,j-1,4.0|diameter",
                "cup-f,31.1,j-1,44|thickness",
                "cup-f,31.1,j-1,four|thickness",
                "cup-ok,31.1,j-1,4.0|cup"
            })
    void aBadRowIsRefusedByRowAndFieldAndTheRestIsTaken(String row, String field) throws Exception {
        CupSheet sheet = read("cup,diameter,job,thickness\ncup-ok,30,j-1,\n" + row + "\n");
        assertThat(sheet.cups()).hasSize(1);
        assertThat(sheet.refused()).singleElement().satisfies(refusal -> {
            assertThat(refusal.row()).isEqualTo(3);
            assertThat(refusal.field()).isEqualTo(field);
            assertThat(refusal.why()).isNotBlank().doesNotContain("Exception");
        });
    }

    @Test
    void aFileWithoutTheColumnsOrWithoutTextIsRefusedWhole() throws Exception {
        assertThat(read("key,size\nf,31\n").refused()).extracting(Refusal::row).containsExactly(0L);
        assertThat(read("").refused()).hasSize(1);
        assertThat(CupSheet.read(folder.resolve("none.csv"), SIZES).refused()).isNotEmpty();
    }

    /** Whatever is thrown at it, it answers; each row is taken or refused. */
    @Test
    void mutatedFilesNeverMakeItFail() throws Exception {
        String good = "cup,diameter,job,thickness\ncup-f,31.1,j-1,4.0\ncup-e,32.2,j-1,\ncup-d,33.5,j-1,4.0\n";
        String junk = "\",\n.;e-9\u00e9\0 m";
        java.util.SplittableRandom random = new java.util.SplittableRandom(20260930);
        for (int trial = 0; trial < 2_000; trial++) {
            StringBuilder text = new StringBuilder(good);
            for (int i = random.nextInt(1, 4); i > 0; i--) {
                text.setCharAt(random.nextInt(text.length()), junk.charAt(random.nextInt(junk.length())));
            }
            CupSheet sheet = read(text.toString());
            assertThat(sheet.cups())
                    .allSatisfy(cup -> assertThat(cup.diameter().doubleValue()).isBetween(5.75, 72.25));
        }
    }
}
