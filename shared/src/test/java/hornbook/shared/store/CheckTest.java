package hornbook.shared.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Contact;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Movement;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What changed by itself is noticed; what a hand may change is told apart; a backup brings all of it back. */
class CheckTest {
    @TempDir
    Path folder;

    @BeforeEach
    void aShopWithSomeHistory() {
        try (Books books = SmallShop.in(folder)) {
            Deed deed = books.write("label", w -> w.put(SmallShop.drawer(1, "NEW")));
            books.undo(deed.number());
            books.write("stock", w -> {
                w.put(SmallShop.move(w.nextId(Movement.class), 7));
                w.put(new Contact("O-001", "Somebody Invented", "by letter"));
                w.setting("name", "\"Low Water\"");
                w.entry("model/m-x.json", "{\"id\":\"m-x\"}");
            });
        }
    }

    private List<String> problems() {
        return new Check(folder).run().problems().stream().map(Problem::line).toList();
    }

    private void sql(String statement) throws Exception {
        try (var sql = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("shop.db"));
                var s = sql.createStatement()) {
            s.executeUpdate("drop trigger if exists movement_stays");
            s.executeUpdate(statement);
            s.executeUpdate("create trigger movement_stays before update of id, date, lot, kind, qty, job, supplier,"
                    + " order_ref, ordered_on,\n  unit_price, note, retired on movement begin select raise(abort,"
                    + " 'the ledger is only added to'); end");
        }
    }

    @Test
    void asItWasLeftNothingIsWrong() throws Exception {
        sql("update drawer set note = note");
        assertThat(problems()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update drawer set label_as_written = 'OTHER'",
                "update movement set qty = 8",
                "update movement set note = 'x'",
                "update contact set reach = 'x'",
                "update setting set value = '\"High Water\"'",
                "update deed set title = 'x' where number = 2",
                "update deed set undone_by = null",
                "update deed set after_seq = after_seq + 1 where number = 4",
                "update deed set chain = x'00' where number = 3",
                "update feed set before = replace(before, 'SCREWS', 'SCROWS')",
                "update feed set \"after\" = 1 where seq = 2",
                "delete from contact",
                "delete from feed where seq = 1",
                "update entry set content = '{}'",
                "update number_given set last = 9 where kind = 'movement'",
                "drop index lot_item",
            })
    void whatNoDeedDidIsNoticed(String change) throws Exception {
        sql(change);
        assertThat(problems()).isNotEmpty();
    }

    @Test
    void aWrongCountIsMendedFromTheLedger() throws Exception {
        sql("update balance set qty = 99");
        assertThat(problems()).singleElement().asString().contains("lot lot-0001", "--repair");
        assertThat(new Repair(folder).run().ok()).isTrue();
        assertThat(folder.resolve("kept-aside")).isDirectory();
    }

    @Test
    void anEntryChangedByHandIsAcceptedAndATornOnePutBack() throws Exception {
        Path entry = folder.resolve("entries/model/m-x.json");
        Files.writeString(entry, "{\"id\":\"m-x\",\"note\":\"by hand\"}");
        assertThat(problems()).singleElement().asString().contains("changed by hand");
        assertThat(new Repair(folder).run().ok()).isTrue();
        assertThat(entry).content().contains("by hand");
        Files.writeString(entry, "{\"id\":\"m-");
        assertThat(new Repair(folder).run().ok()).isTrue();
        assertThat(entry).content().contains("by hand");
        try (Books books = Books.open(folder, Access.WRITE)) {
            books.undo(books.deeds(1).getFirst().number());
        }
        assertThat(entry).hasContent("{\"id\":\"m-x\"}");
    }

    @Test
    void aBackupBringsEverythingBackAndKeepsWhatWasThere() throws Exception {
        Path first = new Backup(folder).make(SmallShop.DAY).file();
        Path second = new Backup(folder).make(SmallShop.DAY).file();
        assertThat(first).hasFileName("shop-2026-09-30.zip");
        assertThat(second).hasFileName("shop-2026-09-30-2.zip");
        sql("update drawer set label_as_written = 'TORN'");
        assertThat(problems()).anyMatch(p -> p.contains("last good backup") && p.contains("30-2.zip"));
        Files.delete(folder.resolve("entries/model/m-x.json"));
        Restore.Answer answer = new Restore(folder).from(second);
        assertThat(problems()).isEmpty();
        assertThat(folder.resolve("entries/model/m-x.json")).exists();
        try (Books was = Books.open(answer.keptAside(), Access.READ);
                Books is = Books.open(folder, Access.READ)) {
            assertThat(was.all(Drawer.class).getFirst().labelAsWritten()).isEqualTo("TORN");
            assertThat(is.all(Drawer.class).getFirst().labelAsWritten()).isEqualTo("SCREWS");
            assertThat(is.all(Contact.class)).hasSize(1);
        }
    }

    @Test
    void aBackupThatIsNotWholeOrNamesOtherPlacesIsRefused() throws Exception {
        Path good = new Backup(folder).make(SmallShop.DAY).file();
        byte[] bytes = Files.readAllBytes(good);
        Path bad = folder.resolve("bad.zip");
        bytes[bytes.length / 3] ^= 4;
        Files.write(bad, bytes);
        assertThatThrownBy(() -> new Restore(folder).from(bad)).isInstanceOf(BadInput.class);
        Files.write(bad, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        assertThatThrownBy(() -> new Restore(folder).from(bad)).isInstanceOf(BadInput.class);
        for (String path : List.of("../evil", "entries/../../x.json", "photos/x.jpg", "/etc/x")) {
            try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(bad))) {
                out.putNextEntry(new ZipEntry("manifest.json"));
                out.write(("{\"holds\":\"backup of a Hornbook shop\",\"shape\":2,\"day\":\"2026-09-30\",\"files\":"
                                + "[{\"path\":\"" + path + "\",\"size\":1,\"sha256\":\"\"}]}")
                        .getBytes());
            }
            assertThatThrownBy(() -> new Restore(folder).from(bad))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining(path);
        }
        assertThat(problems()).isEmpty();
    }

    @Test
    void anOlderShapeIsBroughtUpAfterADatedCopy() throws Exception {
        Path old = Files.createDirectory(folder.resolve("old"));
        try (Query query = new Query(Database.toWrite(old.resolve("shop.db")))) {
            Migrations.run(query, 0, 1);
            query.run("insert into deed (number, title, day) values (1, 'furnish', '2026-01-01')");
            query.run("insert into cabinet (id, name, \"rows\", \"columns\", \"where\", notes)"
                    + " values ('c-0007', 'Oak', 1, 1, '', '')");
            query.run("insert into feed (deed, kind, id) values (1, 'cabinet', 'c-0007')");
        }
        assertThatThrownBy(() -> Books.open(old, Access.READ)).hasMessageContaining("older Hornbook");
        try (Books books = Books.open(old, Access.WRITE)) {
            assertThat(new Check(old).run().problems()).isEmpty();
            books.write(
                    "number",
                    w -> assertThat(w.nextId(hornbook.shared.shop.Cabinet.class))
                            .isEqualTo("c-0008"));
            books.undo(1);
        }
        assertThat(new Check(old).run().problems()).isEmpty();
        assertThat(old.resolve("backups")).isDirectoryContaining("glob:**/shape-1-*.db");
    }

    /** Seven came in; nine went out, as a hurried import may say. Repair writes the two, in a deed that undo takes back. */
    @Test
    void stockBelowNoneIsNamedAndPutRight() {
        try (Books books = Books.open(folder, Access.WRITE)) {
            books.write("too many", w -> w.put(SmallShop.move(w.nextId(Movement.class), -99)));
        }
        assertThat(problems())
                .singleElement()
                .asString()
                .contains("fewer than none", "hornbook check --repair")
                .startsWith("lot " + SmallShop.move("v-1", 1).lot());
        Check.Report mended = new Repair(folder).run();
        assertThat(mended.ok()).isTrue();
        assertThat(mended.done()).anyMatch(done -> done.contains("a correction of +"));
        assertThat(problems()).isEmpty();
        try (Books books = Books.open(folder, Access.WRITE)) {
            assertThat(books.deeds(1).getFirst().title()).isEqualTo("correct what the ledger counts below none");
            books.undo(books.deeds(1).getFirst().number());
        }
        assertThat(problems()).hasSize(1);
    }

    @Test
    void aCopyOfSuchBooksIsStillAGoodBackup() {
        try (Books books = Books.open(folder, Access.WRITE)) {
            books.write("too many", w -> w.put(SmallShop.move(w.nextId(Movement.class), -99)));
        }
        assertThat(Check.ofCopy(folder.resolve("shop.db"))).isEmpty();
    }
}
