package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.viewer.demo.DemoShop;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is not there, is negative, is over or is somebody's name is refused in one line, and no deed is done. */
class RefusalsTest {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    static Path folder;

    @BeforeAll
    static void makeShop() {
        DemoShop.in(folder.resolve("shop")).close();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            job where j-0239 horn "the moon" | there is no drawer or place
            job where j-0239 "" "hook 2" | the piece is empty
            job key j-0239 cup-f rod-diameter -2.38 | no size on a key
            job key j-0239 cup-f rod-diameter 0 | no size on a key
            job key j-0239 cup-f rod-diameter 23800 | no size on a key
            job key j-0239 cup-f thread banana | thread:
            job key j-0239 cup-banana rod-diameter 2.38 | there is no cup
            job key j-0239 cup-f turns-on banana | is none of rod, pivots, sleeves
            job take-in --complaint x --kind banana | is no kind of job
            job take-in --complaint x --instrument banana | is no instrument
            job take-in --complaint x --promised 2020-01-01 | is over
            job take-in --complaint x --promised 2126-01-01 | look at the year
            job take-in --complaint x --owner "A Somebody" | no code of a person
            job take-in --complaint x --quoted 99999999 | cannot be quoted
            job take-in --complaint "" | the complaint is empty
            job consent j-0239 "try it" --by "A Somebody" | no code of a person
            job consent j-0239 "" --by O-040 | is empty
            stock lend tool-taps-dies tool-taps-dies/die/M3x0.5 --to "A Somebody" | no code of a person
            job pad j-0240 cup-banana 31 | is no cup known here
            job pad j-0240 cup-f 310 | is no pad
            job pad j-0240 cup-f 31 --thickness -4 | no thickness
            job change j-0243 | say what is agreed
            job change j-0243 --promised 2020-01-01 | is over
            place X --kind hook --model m-none | is no model
            job start j-0237 task-teardown --count -3 | of a task cannot be
            job start j-0237 task-teardown --who "A Somebody" | no initials
            job told j-0237 task-inspect 20 --count 0 | of a task cannot be
            job told j-0237 task-inspect 20 --on 1830-01-01 | before j-0237 was taken in
            job find j-0240 finding-cup-id -3 --unit mm --where cup-f | below nought
            job timer j-0237 penetrant 999999999 | more than a year
            job timer j-0237 "" 60 | is empty
            job took-down j-0243 "" x | is empty
            stock receive lot-0748 99999999 | cannot come in
            stock receive lot-0748 5 --from NOBODY | hornbook supplier new
            stock salvage lot-0260 1 --from "" | from which horn
            stock move lot-0260 d-card-r5c5 | lies there already
            stock join lot-0260 lot-0260 | joined to itself
            stock set-aside lot-0260 --release | is not set aside already
            stock keepsake lot-0260 --release | is not a pattern already
            stock change lot-0260 | would be otherwise
            tool checked tool-caliper --off 900 | is no error in mm
            look-through --cabinet nowhere | there is no cabinet
            horn confirm h-192 m-halverick-drumlin-alto --job j-9999 | is no job of horn h-192
            restock ordered nobody | hornbook supplier new
            restock ordered tidegate lot-0748=many | says not how many
            find x --limit -3 | shows nothing
            undo banana | is no whole number
            """)
    void whatCannotBeIsRefusedInOneLine(String line, String told) {
        Path shop = folder.resolve("shop");
        long before = deeds(shop);
        CalledCli called = new CalledCli(Map.of("HORNBOOK_SHOP", shop.toString()), "Linux", folder);
        int code = called.run(WORD.matcher(line)
                .results()
                .map(word -> word.group(1) != null ? word.group(1) : word.group(2))
                .toArray(String[]::new));
        assertThat(code).as(line).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(called.err.toString())
                .contains(told)
                .doesNotContain("Somebody")
                .hasLineCount(1);
        assertThat(deeds(shop)).as("nothing is done").isEqualTo(before);
    }

    private static long deeds(Path shop) {
        try (Books books = Books.open(shop, Access.READ)) {
            return books.feedEnd();
        }
    }

    /** The pad that is in the cup is named; with a word another goes in. */
    @org.junit.jupiter.api.Test
    void aSecondPadInOneCupIsAskedAbout() {
        Map<String, String> shop =
                Map.of("HORNBOOK_SHOP", folder.resolve("shop").toString());
        CalledCli first = new CalledCli(shop, "Linux", folder);
        assertThat(first.run("job", "pad", "j-0240", "cup-f", "31.5")).isZero();
        CalledCli second = new CalledCli(shop, "Linux", folder);
        assertThat(second.run("job", "pad", "j-0240", "cup-f", "31.5")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(second.err.toString()).contains("31.5 mm already").contains("--again");
        assertThat(new CalledCli(shop, "Linux", folder).run("job", "pad", "j-0240", "cup-f", "31.5", "--again"))
                .isZero();
    }
}
