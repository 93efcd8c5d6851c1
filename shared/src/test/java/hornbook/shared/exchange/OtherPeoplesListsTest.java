package hornbook.shared.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.Lot;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists as other people keep them, with the faults such lists have (from memory): taken where plain, else asked. */
class OtherPeoplesListsTest {
    @TempDir
    Path folder;

    private Books books;

    @BeforeEach
    void open() {
        books = Books.open(folder.resolve("shop"), Access.WRITE, LocalDate.of(2026, 9, 30));
    }

    @AfterEach
    void close() {
        books.close();
    }

    private ImportReport take(SheetKind kind, String text, Charset charset) throws Exception {
        Path file = Files.write(folder.resolve("list.csv"), text.getBytes(charset));
        return new SheetImport(books, StandardSizes.load().reader(), Names.NONE).from(file, kind, Map.of(), false);
    }

    private ImportReport take(SheetKind kind, String... lines) throws Exception {
        return take(kind, String.join("\r\n", lines) + "\r\n", StandardCharsets.UTF_8);
    }

    private static List<String> why(ImportReport report) {
        return report.refused().stream()
                .map(no -> no.line() + " " + no.field() + " " + no.why())
                .toList();
    }

    private Map<String, String> counts() {
        return books.all(Lot.class).stream()
                .collect(Collectors.toMap(Lot::title, lot -> lot.count().written()));
    }

    @Test
    void semicolonsDecimalCommasGermanHeadingsAndWindowsLetters() throws Exception {
        ImportReport report = take(
                SheetKind.LOTS,
                "Schublade;Teil;Menge;Maß;Gewinde;Bemerkung\nB-1;Spitzschraube, konisch;12;10,4 mm;3-48;für vorn\n"
                        + "B-2;Kork;einige;1,6;;grün\n",
                Charset.forName("windows-1252"));
        assertThat(report.refused()).isEmpty();
        assertThat(books.all(Lot.class)).extracting(Lot::dimensions).containsExactly("size=10,4 mm", "size=1.6 mm");
        assertThat(books.all(Lot.class)).extracting(Lot::note).containsExactly("für vorn", "grün");
        assertThat(counts()).containsEntry("Kork", "some");
    }

    @Test
    void titlesAboveTheHeadingsBlankRowsAndATotalBelow() throws Exception {
        ImportReport report = take(
                SheetKind.LOTS,
                "My parts list,,,,",
                "by hand 2025,,,,",
                ",,,,",
                "Bin,Description,Qty,Size,",
                "B-1,Pivot screw,12,10.4 mm,",
                "",
                "B-2,Guard screw,4,6 mm,",
                ",,,,",
                "Total,,16,,");
        assertThat(report.taken()).isEqualTo(2);
        assertThat(report.remarks()).anyMatch(remark -> remark.contains("2 rows were passed over"));
        assertThat(why(report)).singleElement().asString().startsWith("9 title is empty");
    }

    @Test
    void namelessAndDoubledColumnsAreToldApart() throws Exception {
        ImportReport report =
                take(SheetKind.LOTS, "drawer,part,,qty,note,note,", "B-1,rod,,3,one,two,", "B-2,pad,x,4,,,");
        assertThat(report.refused()).isEmpty();
        assertThat(books.all(Lot.class)).extracting(Lot::note).containsExactly("one", "");
        assertThat(report.remarks())
                .anyMatch(remark -> remark.contains("“note (2)” was left out"))
                .anyMatch(remark -> remark.contains("“column C” was left out"))
                .noneMatch(remark -> remark.contains("column G"));
    }

    @Test
    void theFirstLineMaySayTheSeparator() throws Exception {
        assertThat(take(SheetKind.LOTS, "sep=;", "drawer;item;qty", "B-1;pivot, tapered;3")
                        .taken())
                .isEqualTo(1);
        assertThat(take(
                                SheetKind.LOTS,
                                "Box\tWhat\tHow many\r\nB-9\tressort à aiguille\t4\r\n",
                                StandardCharsets.UTF_16)
                        .taken())
                .isEqualTo(1);
    }

    /** A number that is only about right, or may be thousands, is asked about; it is never made an exact one. */
    @ParameterizedTest
    @CsvSource({
        "-3, less than nothing",
        "~20, not a whole number",
        "10+, not a whole number",
        "3 or 4, not a whole number",
        "?, not a whole number",
        "ca. 20, not a whole number",
        "1.5, not a whole number",
        "'1,000', thousands or a fraction",
        "1.000, thousands or a fraction",
        "9999999, look for a slip"
    })
    void doubtfulCountsAreRefused(String count, String why) throws Exception {
        ImportReport report = take(SheetKind.LOTS, "drawer,item,qty", "B-1,a,\"" + count + "\"");
        assertThat(why(report)).singleElement().asString().startsWith("2 count").contains(why);
        assertThat(books.all(Lot.class)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"12 pcs., 12", "12.0, 12", "2 doz, 24", "none, 0", "0, 0", "a few, few", "viele, plenty", "7 Stück, 7"})
    void plainCountsAreTaken(String count, String taken) throws Exception {
        take(SheetKind.LOTS, "drawer,item,qty", "B-1,a," + count);
        assertThat(counts()).containsEntry("a", taken);
    }

    @ParameterizedTest
    @CsvSource({
        "2025-04-02",
        "2025/4/2",
        "2.4.2025",
        "02.04.25",
        "2 Apr 2025",
        "2. April 2025",
        "April 2 2025",
        "'Apr 2, 2025'",
        "2-Apr-25",
        "45749"
    })
    void theSameDayInManyHands(String written) throws Exception {
        take(SheetKind.HORNS, "No,Horn", "H1,alto");
        ImportReport report = take(SheetKind.JOBS, "Ticket,Horn no,Date in,Work", "T1,H1,\"" + written + "\",overhaul");
        assertThat(report.refused()).isEmpty();
        assertThat(books.all(Job.class)).extracting(Job::tookIn).containsExactly(LocalDate.of(2025, 4, 2));
        assertThat(books.all(Job.class)).extracting(Job::id).containsExactly("T1");
    }

    /** Month first in one row and day first in another: neither hand settles what lies between. */
    @Test
    void threeOrdersOfDaysInOneColumn() throws Exception {
        take(SheetKind.HORNS, "No,Horn", "H1,alto");
        ImportReport report = take(
                SheetKind.JOBS,
                "Ticket,Horn no,Date in,Time",
                "T1,H1,3/14/2025,12.5",
                "T2,H1,31/12/2025,1h30",
                "T3,H1,6/7/25,2 1/2",
                "T4,H1,02.05.2025,1:30:00",
                "T5,H1,Jan 2025,");
        assertThat(books.all(Job.class)).extracting(Job::id).containsExactly("T1", "T2", "T4");
        assertThat(books.all(Job.class)).extracting(Job::minutesTotal).containsExactly(750, 90, 90);
        assertThat(why(report))
                .satisfiesExactly(
                        no -> assertThat(no).contains("4 took_in").contains("2025-07-06 or 2025-06-07"),
                        no -> assertThat(no).contains("6 took_in").contains("Jan 2025"));
    }

    @ParameterizedTest
    @CsvSource({
        "A1, d-a-r1c1",
        "B 5, d-b-r2c1",
        "Oak/3, d-oak-r1c3",
        "Drawer 12, d-drawer-r3c4",
        "'Oak chest, row 2, col 3', d-oak-chest-r2c3",
        "oak r2c3, d-oak-r2c3"
    })
    void placesAsTheyAreWritten(String written, String drawer) throws Exception {
        assertThat(take(SheetKind.DRAWERS, "Drawer,Label", "\"" + written + "\",X")
                        .refused())
                .isEmpty();
        assertThat(books.all(Drawer.class)).extracting(Drawer::id).containsExactly(drawer);
    }

    @ParameterizedTest
    @CsvSource({"top left", "#7", "17", "?"})
    void whatNamesNoDrawerIsAskedAbout(String written) throws Exception {
        assertThat(why(take(SheetKind.DRAWERS, "Drawer,Label", written + ",X")))
                .singleElement()
                .asString()
                .contains("no place of this shop");
    }

    @Test
    void doubledNumbersShortenedSerialsAndBrokenFormulas() throws Exception {
        ImportReport report = take(
                SheetKind.HORNS,
                "No,Maker,Horn,S/N,Customer",
                "1,Halverick,alto,'00123,\"Q., J.\"",
                "1,Brindlow,tenor,12,",
                "2,Brindlow,tenor,1.23E+05,",
                "3,,alto,N/A,—",
                "4,,#REF!,12,");
        assertThat(books.all(Horn.class)).extracting(Horn::serial).containsExactly("00123", "");
        assertThat(why(report))
                .satisfiesExactly(
                        no -> assertThat(no).contains("3 id").contains("another already"),
                        no -> assertThat(no).contains("4 serial").contains("shortened"),
                        no -> assertThat(no).contains("6 instrument").contains("formula fails"));
    }

    @Test
    void sizesBentIntoDaysAreOfferedAsTheyWere() throws Exception {
        ImportReport report = take(
                SheetKind.LOTS,
                "drawer,item,qty,size,thread",
                "B-1,rod,2,118 mm,Mar-48",
                "B-2,drill,1,07/64/2026,",
                "B-3,drill,1,01/16/26,",
                "B-4,rod,2,3/32,3-48");
        assertThat(why(report))
                .satisfiesExactly(
                        no -> assertThat(no).contains("2 thread").contains("3-48"),
                        no -> assertThat(no).contains("3 dimensions"),
                        no -> assertThat(no).contains("4 dimensions").contains("1/16"));
        assertThat(counts()).isEqualTo(Map.of("rod", new Count.Exact(2).written()));
    }
}
