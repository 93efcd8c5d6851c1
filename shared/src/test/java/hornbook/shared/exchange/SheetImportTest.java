package hornbook.shared.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import hornbook.shared.measure.SizeReader;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Contact;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Supplier;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.shared.store.Check;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists as people keep them: what they mean is taken, what is doubtful is asked about by row and field. */
class SheetImportTest {
    private static final SizeReader SIZES = StandardSizes.load().reader();

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
        assertThat(new Check(folder.resolve("shop")).run().problems()).isEmpty();
    }

    private ImportReport take(SheetKind kind, String text) throws Exception {
        return take(kind, text.getBytes(StandardCharsets.UTF_8), Map.of(), false);
    }

    private ImportReport take(SheetKind kind, byte[] bytes, Map<String, String> map, boolean dry) throws Exception {
        Path file = Files.write(folder.resolve("list.csv"), bytes);
        return new SheetImport(books, SIZES, Names.NONE).from(file, kind, map, dry);
    }

    @Test
    void aSemicolonListInWindowsTextMakesItsCabinets() throws Exception {
        byte[] text = "Place;Label;Contents;Last checked\nB-4;Öl & Kork;cork;30.09.2026\n\n;;;\nB-9;FELT;;2026-09-01\n"
                .getBytes(Charset.forName("windows-1252"));
        ImportReport report = take(SheetKind.DRAWERS, text, Map.of(), false);
        assertThat(report.refused()).isEmpty();
        assertThat(report.read()).isEqualTo(2);
        assertThat(report.remarks())
                .anyMatch(r -> r.contains("Windows-1252"))
                .anyMatch(r -> r.contains("“Last checked”"));
        assertThat(books.all(Drawer.class))
                .extracting(Drawer::labelAsWritten, Drawer::row, Drawer::column)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple("Öl & Kork", 1, 4),
                        org.assertj.core.api.Assertions.tuple("FELT", 3, 1));
        assertThat(books.all(Cabinet.class))
                .singleElement()
                .satisfies(c -> assertThat(c.rows()).isEqualTo(3));
    }

    @Test
    void lotsAreCountedMeasuredAndRefusedByField() throws Exception {
        ImportReport report = take(
                SheetKind.LOTS,
                "Bin,Part,Size,Thread,Qty,Condition\n"
                        + "B-4,neck screw,\"12,5 mm\",M3x0.5,7,used\n"
                        + "B-4,pivot screw,length=10.4 mm;nose=pointed,3-48,a few,new\n"
                        + "oak r2c3,rod,rather long,,3,new\n"
                        + "behind the door,felt,,,2,new\n"
                        + "B-5,cork,,,minus one,new\n"
                        + "B-5,screw,,M99q,1,new\n"
                        + "B-4,neck screw,\"12,5 mm\",,1,new\n");
        assertThat(report.refused())
                .extracting(Refusal::row, Refusal::field)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple(4L, "dimensions"),
                        org.assertj.core.api.Assertions.tuple(5L, "drawer"),
                        org.assertj.core.api.Assertions.tuple(6L, "count"),
                        org.assertj.core.api.Assertions.tuple(7L, "thread"),
                        org.assertj.core.api.Assertions.tuple(8L, "title"));
        assertThat(books.all(Lot.class)).extracting(Lot::count).containsExactly(new Count.Exact(7), Count.Rough.FEW);
        assertThat(books.wrongBalances()).isEmpty();
    }

    @Test
    void hornsJobsAndHoursFollowEachOther() throws Exception {
        take(
                SheetKind.HORNS,
                "No,Maker,Instrument,Serial,Owner\n17,Nobody's Make,Alto,12345,Ada Invented\n18,,Tenor,,O-044\n");
        assertThat(books.all(Horn.class)).extracting(Horn::id).containsExactly("17", "18");
        assertThat(books.all(Horn.class)).extracting(Horn::ownerCode).containsExactly("O-001", "O-044");
        assertThat(books.all(Contact.class)).extracting(Contact::name).containsExactly("Ada Invented");
        ImportReport jobs = take(
                SheetKind.JOBS,
                "No\tHorn\tDate in\tFinished\tHours\n1\t17\t09/30/2025\t10/02/2025\t1,5\n2\t99\t09/30/2025\t\t\n");
        assertThat(jobs.refused())
                .singleElement()
                .satisfies(r -> assertThat(r.field()).isEqualTo("horn"));
        assertThat(books.all(Job.class).getFirst().minutesTotal()).isEqualTo(90);
        take(SheetKind.HOURS, "job,task,hours,date,who\n1,seat pads,1:15,2025-10-01,N.O.\n");
        assertThat(books.all(TaskTime.class).getFirst().minutes()).isEqualTo(75);
    }

    @Test
    void aDoubtfulDayIsAskedAboutUnlessItsColumnSettlesIt() throws Exception {
        take(SheetKind.HORNS, "id,instrument\nh-1,alto\n");
        ImportReport asked = take(SheetKind.JOBS, "horn,took_in\nh-1,03/04/2025\n");
        assertThat(asked.refused())
                .singleElement()
                .satisfies(r -> assertThat(r.why()).contains("2025-04-03 or 2025-03-04"));
        ImportReport settled = take(SheetKind.JOBS, "horn,took_in\nh-1,03/04/2025\nh-1,25/04/2025\n");
        assertThat(settled.refused()).isEmpty();
        assertThat(books.all(Job.class).getFirst().tookIn()).isEqualTo(LocalDate.of(2025, 4, 3));
    }

    @ParameterizedTest
    @CsvSource({"1.5,90", "'1,5 h',90", "1:30,90", "90 min,90", "1h 30min,90", "2,120", "0.25h,15"})
    void hoursAreReadAsWritten(String written, int minutes) {
        assertThat(SheetNumbers.minutes(written)).isEqualTo(minutes);
    }

    @Test
    void aMapNamesColumnsAndADryRunChangesNothing() throws Exception {
        byte[] text = "Gdzie,Co,Ile\nB-1,cork,4\n".getBytes(StandardCharsets.UTF_8);
        Map<String, String> map = Map.of("Gdzie", "drawer", "Co", "title", "Ile", "count");
        assertThatThrownBy(() -> take(SheetKind.LOTS, text, Map.of(), false))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("--map COLUMN=drawer");
        assertThatThrownBy(() -> take(SheetKind.LOTS, text, Map.of("Wo", "drawer"), false))
                .hasMessageContaining("no column “Wo”");
        assertThat(take(SheetKind.LOTS, text, map, true).taken()).isEqualTo(1);
        assertThat(books.all(Cabinet.class)).isEmpty();
        assertThat(take(SheetKind.LOTS, text, map, false).taken()).isEqualTo(1);
        assertThat(books.all(Lot.class).getFirst().count()).isEqualTo(new Count.Exact(4));
    }

    @Test
    void howAListWasUnderstoodIsSaidBeforeAnythingIsTaken() throws Exception {
        Path file = folder.resolve("teile.csv");
        Files.write(
                file,
                "Schublade;Teil;Größe;Menge;geprüft\nB-4;Halsschraube;2,5 mm;3;14.3.2025\n"
                        .getBytes(Charset.forName("windows-1252")));
        SheetImport sheets = new SheetImport(books, SIZES, Names.NONE);
        SheetLook look = sheets.look(file, SheetKind.LOTS, Map.of("Schublade", "drawer", "Teil", ""));
        assertThat(look.encoding()).isEqualTo("Windows-1252");
        assertThat(look.separator()).isEqualTo("semicolon");
        assertThat(look.decimals()).isEqualTo("comma");
        assertThat(look.dates()).isEqualTo("day first");
        assertThat(look.columns()).containsExactly("Schublade", "Teil", "Größe", "Menge", "geprüft");
        assertThat(look.fields())
                .containsOnly(
                        Map.entry("Schublade", "drawer"),
                        Map.entry("Größe", "dimensions"),
                        Map.entry("Menge", "count"));
        assertThat(look.lacking()).containsExactly("title");
        assertThat(look.first())
                .first()
                .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.LIST)
                .contains("Halsschraube");
        assertThat(books.all(Drawer.class)).isEmpty();
    }

    @Test
    void whatWasToldOfColumnsIsRememberedForTheNextList() throws Exception {
        Map<String, String> told = Map.of("Gdzie", "drawer", "Co", "title", "Ile", "count", "qty", "");
        ImportReport first = take(SheetKind.LOTS, bytes("Gdzie,Co,Ile,qty\nB-1,rod,3,9\n"), told, false);
        assertThat(first.taken()).isEqualTo(1);
        assertThat(books.all(Lot.class).getFirst().count()).isEqualTo(new Count.Exact(3));
        ImportReport second = take(SheetKind.LOTS, "Gdzie,Co,Ile,qty\nB-2,screw,4,9\n");
        assertThat(second.taken()).isEqualTo(1);
        assertThat(books.all(Lot.class).getLast().count()).isEqualTo(new Count.Exact(4));
    }

    @Test
    void aDryRunRemembersNothing() throws Exception {
        take(SheetKind.LOTS, bytes("Gdzie,Co\nB-1,rod\n"), Map.of("Gdzie", "drawer", "Co", "title"), true);
        assertThatThrownBy(() -> take(SheetKind.LOTS, "Gdzie,Co\nB-1,rod\n")).hasMessageContaining("no column holds");
    }

    @Test
    void refusedRowsComeBackInOnceTheyAreCorrected() throws Exception {
        String list = "drawer,title,count\nB-1,rod,3\nB-2,screw,many of them\nB-3,pad\nB-4,cork,a,b\n";
        ImportReport report = take(SheetKind.LOTS, list);
        assertThat(report.taken()).isEqualTo(1);
        Path fix = folder.resolve("fix.csv");
        new SheetImport(books, SIZES, Names.NONE).rowsToFix(folder.resolve("list.csv"), report, fix);
        String rows = Files.readString(fix);
        assertThat(rows.lines()).hasSize(4).first().asString().endsWith("why it was refused");
        assertThat(rows).contains("screw").contains("pad").contains("cork").contains("whole number");
        String corrected =
                rows.replace("many of them", "12").replace("\"a, b\"", "7").replaceFirst("B-3,pad,,", "B-3,pad,2,");
        ImportReport again = take(SheetKind.LOTS, corrected);
        assertThat(again.refused()).isEmpty();
        assertThat(again.taken()).isEqualTo(3);
        assertThat(again.remarks()).noneMatch(remark -> remark.contains("why it was refused"));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void aDrawerIsNamedByWhatItsLabelSays() throws Exception {
        take(SheetKind.DRAWERS, "Place,Label\nB-1,Pivots\nB-2,Screws 3\nB-3,misc\nB-4,misc\n");
        ImportReport report =
                take(SheetKind.LOTS, "Bin,Part,Qty\npivots,pivot screw,7\nScrews 3,neck screw,2\nmisc,felt,1\n");
        assertThat(report.refused())
                .singleElement()
                .satisfies(r -> assertThat(r.why()).contains("on 2 labels"));
        assertThat(books.all(Lot.class)).extracting(Lot::drawer).containsExactly("d-b-r1c1", "d-b-r1c2");
        assertThat(books.all(Cabinet.class)).hasSize(1);
    }

    @Test
    void suppliersComeInByNameAndASecondListDoublesNobody() throws Exception {
        String list = "Supplier,Town,Lead time,Verdict,Reason\n"
                + "Harrowgate Felts,upriver,10 days,keep,even thickness\nOxbow,,soon,,\nPell,,,avoid,\n";
        ImportReport first = take(SheetKind.SUPPLIERS, list);
        assertThat(first.refused()).extracting(Refusal::field).containsExactly("days", "why");
        assertThat(books.all(Supplier.class))
                .extracting(Supplier::name, Supplier::place, Supplier::leadDaysObserved, Supplier::verdict)
                .containsExactly(tuple("Harrowgate Felts", "upriver", "10", "keep"));
        assertThat(take(SheetKind.SUPPLIERS, list).refused())
                .extracting(Refusal::field)
                .contains("name");
        assertThat(books.all(Supplier.class)).hasSize(1);
    }

    /** A list without numbers would double all it holds, and nobody would see it. */
    @Test
    void aListWithoutNumbersThatComesInTwiceDoublesNothing() throws Exception {
        take(SheetKind.HORNS, "id,instrument\nh-1,alto\n");
        String horns = "instrument,serial\nalto,40367\n";
        take(SheetKind.HORNS, horns);
        assertThat(take(SheetKind.HORNS, horns).refused().getFirst().why()).contains("already as h-");
        String jobs = "horn,took_in,kind\nh-1,2025-04-25,overhaul\n";
        take(SheetKind.JOBS, jobs);
        assertThat(take(SheetKind.JOBS, jobs).refused().getFirst().why()).contains("taken in that day already, as j-");
        String hours = "job,task,hours,date\n%s,leak check,1,2025-04-26\n"
                .formatted(books.all(Job.class).getFirst().id());
        take(SheetKind.HOURS, hours);
        assertThat(take(SheetKind.HOURS, hours).refused().getFirst().why()).contains("in the books already");
        assertThat(books.all(Horn.class)).hasSize(2);
        assertThat(books.all(Job.class)).hasSize(1);
        assertThat(books.all(TaskTime.class)).hasSize(1);
    }
}
