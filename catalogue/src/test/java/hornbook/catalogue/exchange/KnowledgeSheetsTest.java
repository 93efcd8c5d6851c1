package hornbook.catalogue.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Years;
import hornbook.shared.exchange.EntryFile;
import hornbook.shared.exchange.KnowledgeFiles.Incoming;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The files of the invented demonstration shop, as the project's trade notes give them. */
class KnowledgeSheetsTest {
    private static final List<String> FILES =
            List.of("makes.csv", "stencils.csv", "models.jsonl", "layout.csv", "takedown.csv", "looks.csv");

    private static final Catalogue SHIPPED = Catalogue.shipped();

    @TempDir
    Path temp;

    private Path in;

    @BeforeEach
    void copyTheDemo() throws IOException {
        in = Files.createDirectory(temp.resolve("in"));
        for (String file : FILES) {
            try (InputStream demo =
                    Objects.requireNonNull(getClass().getResourceAsStream("/hornbook/catalogue/exchange/" + file))) {
                Files.copy(demo, in.resolve(file));
            }
        }
    }

    /** 15 makes, 24 sellers, 59 models, 302 keys, 55 steps, 65 looks. */
    @Test
    void everyRowOfTheDemoIsTaken() {
        Incoming read = read();
        assertThat(read.read()).isEqualTo(15 + 24 + 59 + 302 + 55 + 65);
        assertThat(read.refused()).isEmpty();
        assertThat(read.remarks()).isEmpty();
        assertThat(read.entries()).hasSize(15 + 24 + 59);
    }

    @Test
    void whatWasReadIsWrittenByteForByte() throws IOException {
        Path out = Files.createDirectory(temp.resolve("out"));
        Incoming read = read();
        new KnowledgeSheets(opened(read)).write(out, read.order());
        for (String file : FILES) {
            assertThat(out.resolve(file)).hasSameBinaryContentAs(in.resolve(file));
        }
        assertThat(Files.list(out)).hasSize(FILES.size());
    }

    @Test
    void readingAgainChangesNothing() throws IOException {
        Incoming first = read();
        Catalogue shop = opened(first);
        assertThat(new KnowledgeSheets(shop).read(in).entries()).containsExactlyInAnyOrderElementsOf(first.entries());
    }

    @Test
    void aModelKeepsTheMapThatALaterReadingDoesNotBring() throws IOException {
        Incoming first = read();
        Catalogue shop = opened(first);
        Files.delete(in.resolve("layout.csv"));
        Files.delete(in.resolve("takedown.csv"));
        assertThat(new KnowledgeSheets(shop).read(in).entries()).containsExactlyInAnyOrderElementsOf(first.entries());
    }

    @Test
    void theEntriesHoldWhatTheFilesSay() throws IOException {
        Catalogue shop = opened(read());
        assertThat(shop.problems()).isEmpty();
        Model model = shop.models().get("m-halverick-drumlin-alto");
        assertThat(model.map()).hasSizeGreaterThan(20);
        assertThat(model.map().getFirst().diameter()).isEqualTo(2.85);
        assertThat(model.takingDown()).hasSize(10);
        assertThat(model.takingDown().getFirst().job()).isEqualTo("j-0136");
        assertThat(shop.sellers().get("s-merrivane").madeBy().getFirst().weight())
                .isEqualTo(0.45);
        assertThat(shop.makes().get("k-sorakane").years()).isEqualTo(new Years(1955, null));
    }

    /** Each row broken in one place: refused with file, row (the header is 1) and field; all others taken. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "makes.csv | 1909-1957 | nineteen | 3 | years | not a span of years",
                "makes.csv | k-brindlow,Brindlow | k-brindlow, | 3 | name | is empty",
                "makes.csv | k-brindlow,Brindlow | K Brindlow,Brindlow | 3 | id | small letters",
                "makes.csv | k-brindlow,Brindlow | ../k-x,Brindlow | 3 | id | small letters",
                "makes.csv | k-brindlow,Brindlow | k-halverick,Brindlow | 3 | id | earlier row",
                "makes.csv | k-brindlow,Brindlow | q-red-rot,Brindlow | 3 | id | id of a quirk",
                "stencils.csv | lanternist:0.85 | lanternist:0.75 | 3 | made_by | add up to 0.9",
                "stencils.csv | lanternist:0.85 | lanternist | 3 | made_by | lacks its weight",
                "stencils.csv | 1912,1938 | x,1938 | 3 | year_from | not a whole number",
                "models.jsonl | \"soldered-on\": 0.95 | \"soldered-on\": 0.55 | 1 | traits.tone-hole-make | add up to 0.6",
                "models.jsonl | [300001, 1901] | [300001] | 1 | serial_anchors | must hold pairs",
                "models.jsonl | \"pattern\" | \"patern\" | 1 | pattern | is missing",
                "models.jsonl | {\"id\" | [\"id\" | 1 | | is not JSON",
                "layout.csv | palm F,2.85 | palm F,thick | 2 | diameter_mm | not a number",
                "layout.csv | m-halverick-drumlin-alto,palm F | m-x,palm F | 2 | model | no model has the id m-x",
                "takedown.csv | alto,1,neck | alto,one,neck | 2 | step | not a whole number",
                "looks.csv | family-member,one,glance,0.02 | family-member,one,glance,2 | 2 | miss | between 0 and 1",
                "looks.csv | family-member | family | 2 | trait | no trait is called so",
                "looks.csv | ring-soldered>rolled | ring>rolled | 13 | named_mistake | ring is not a value"
            })
    void aBadRowIsRefusedAlone(String file, String right, String wrong, long row, String field, String why)
            throws IOException {
        String text = Files.readString(in.resolve(file));
        assertThat(text).contains(right);
        Files.writeString(in.resolve(file), text.replaceFirst("\\Q" + right, wrong));
        Incoming read = read();
        assertThat(read.refused()).as(read.refused().toString()).anySatisfy(r -> {
            assertThat(r.file()).isEqualTo(file);
            assertThat(r.row()).isEqualTo(row);
            assertThat(r.field()).isEqualTo(field);
            assertThat(r.why()).contains(why);
        });
        assertThat(read.entries()).hasSizeBetween(15 + 24 + 59 - 1, 15 + 24 + 59);
    }

    @Test
    void aLookThatDiffersMakesAnEntryOfTheShop() throws IOException {
        String text = Files.readString(in.resolve("looks.csv"));
        Files.writeString(
                in.resolve("looks.csv"), text.replace("soprano-form,one,glance,0.02", "soprano-form,one,glance,0.04"));
        Incoming read = read();
        assertThat(read.entries()).extracting(EntryFile::path).contains("trait/soprano-form.json");
        assertThat(opened(read).traits().get("soprano-form").miss()).isEqualTo(0.04);
    }

    @Test
    void aFileThatLacksAColumnIsRefusedWhole() throws IOException {
        Files.writeString(in.resolve("makes.csv"), "id,name\nk-one,One\n");
        Incoming read = read();
        assertThat(read.refused()).anySatisfy(r -> {
            assertThat(r.file()).isEqualTo("makes.csv");
            assertThat(r.row()).isZero();
            assertThat(r.why()).contains("other_names, place, years, notes");
        });
        assertThat(read.entries()).hasSize(24 + 59);
        assertThat(read.remarks()).hasSize(59).allSatisfy(r -> assertThat(r).contains("make: nothing has the id k-"));
    }

    @Test
    void anEmptyFolderHoldsNothing() throws IOException {
        assertThat(new KnowledgeSheets(SHIPPED).read(Files.createDirectory(temp.resolve("none"))))
                .isEqualTo(new Incoming(0, List.of(), List.of(), List.of(), Map.of()));
    }

    private Incoming read() {
        return new KnowledgeSheets(SHIPPED).read(in);
    }

    private Catalogue opened(Incoming read) throws IOException {
        Path entries = temp.resolve("entries");
        for (EntryFile file : read.entries()) {
            Path path = entries.resolve(file.path());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.json());
        }
        return Catalogue.open(entries);
    }
}
