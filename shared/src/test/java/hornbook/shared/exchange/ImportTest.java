package hornbook.shared.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.shop.Drawer;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Good rows are taken together, bad ones named, and an unreadable file takes nothing. */
class ImportTest {
    private static final String CABINETS = "id,name,rows,columns,where,notes\nc-a,Oak chest,3,2,,\n";
    private static final String DRAWERS =
            "id,cabinet,row,column,label_as_written,written_by,contents_as_found,label_state,last_looked_through,note\n";

    @TempDir
    Path folder;

    private Path given;
    private Books books;

    @BeforeEach
    void open() throws Exception {
        given = Files.createDirectory(folder.resolve("given"));
        Files.writeString(given.resolve("cabinets.csv"), CABINETS);
        books = Books.open(folder.resolve("shop"), Access.WRITE);
    }

    @AfterEach
    void close() {
        books.close();
    }

    private ImportReport drawers(String rows, boolean dryRun) throws Exception {
        Files.writeString(given.resolve("drawers.csv"), DRAWERS + rows);
        return new Import(books, new NoKnowledge()).from(given, dryRun);
    }

    @Test
    void aNumberGivenTwiceIsRefusedTheSecondTime() throws Exception {
        ImportReport report = drawers("d-1,c-a,1,1,A,,,right,,\nd-1,c-a,1,2,B,,,right,,\n", false);
        assertThat(report.refused())
                .containsExactly(
                        new Refusal("drawers.csv", 3, 3, "id", "is the number of row 2 already: give it another"));
        assertThat(books.all(Drawer.class)).extracting(Drawer::labelAsWritten).containsExactly("A");
    }

    @Test
    void whatTheBooksTurnAwayIsOneRowAndNotTheImportEvenDry() throws Exception {
        String rows = "d-1,c-a,1,1,A,,,right,,\nd-2,c-a,1,1,B,,,right,,\nd-3,c-a,2,1,C,,,right,,\n";
        ImportReport dry = drawers(rows, true);
        assertThat(books.all(Drawer.class)).isEmpty();
        ImportReport report = drawers(rows, false);
        assertThat(report).isEqualTo(dry);
        assertThat(report.taken()).isEqualTo(3);
        assertThat(report.refused()).singleElement().satisfies(r -> {
            assertThat(r.row()).isEqualTo(3);
            assertThat(r.why()).contains("another drawer is at that row and column");
        });
    }

    @Test
    void aFileThatCannotBeReadToItsEndTakesNothing() throws Exception {
        ImportReport report = drawers("d-1,c-a,1,1,A,,,right,,\nd-2,c-a,1,2,\"B,,,right,,\n", false);
        assertThat(report.refused())
                .singleElement()
                .satisfies(r -> assertThat(r.why()).contains("quotation mark"));
        assertThat(books.all(Drawer.class)).isEmpty();
        assertThat(report.taken()).isEqualTo(1);
    }

    @Test
    void aClockThatIsNoDayIsRefusedAndTheRestTaken() throws Exception {
        Files.writeString(given.resolve("shop.json"), "{\"as_of\": \"soon\", \"name\": \"Low Water\"}");
        ImportReport report = drawers("", false);
        assertThat(report.refused())
                .singleElement()
                .satisfies(r -> assertThat(r.field()).isEqualTo("as_of"));
        assertThat(books.setting("name")).contains("\"Low Water\"");
    }

    @Test
    void whatChangesNothingIsNoDeed() throws Exception {
        drawers("d-1,c-a,1,1,A,,,right,,\n", false);
        int before = books.deeds(9).size();
        drawers("d-1,c-a,1,1,A,,,right,,\n", false);
        assertThat(books.deeds(9)).hasSize(before);
    }

    @Test
    void refusedRowsOfAWholeExportComeBackInOnceTheyAreCorrected() throws Exception {
        ImportReport report = drawers("d-1,c-a,1,1,A,,,right,,\nd-2,c-a,one,2,B,,,right,,\n", false);
        assertThat(report.taken()).isEqualTo(2);
        Path fix = folder.resolve("fix");
        new Import(books, new NoKnowledge()).rowsToFix(given, report, fix);
        assertThat(fix).isDirectoryContaining("glob:**drawers.csv").isDirectoryNotContaining("glob:**cabinets.csv");
        Path rows = fix.resolve("drawers.csv");
        assertThat(Files.readString(rows)).contains("why it was refused").contains("one");
        Files.writeString(rows, Files.readString(rows).replace("one", "1"));
        ImportReport again = new Import(books, new NoKnowledge()).from(fix, false);
        assertThat(again).isEqualTo(new ImportReport(1, 1, List.of(), List.of()));
        assertThat(books.all(Drawer.class)).hasSize(2);
    }
}
