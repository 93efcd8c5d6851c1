package hornbook.shared.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.ShopUnavailable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BooksTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 30);

    @TempDir
    Path folder;

    private Books books;

    @BeforeEach
    void aShopWithOneDrawerAndOneLot() {
        books = Books.open(folder, Access.WRITE, DAY);
        books.write("furnish", w -> {
            w.put(new Cabinet("c-oak", "Oak chest", 2, 2, "window", ""));
            w.put(new Drawer("d-1", "c-oak", 1, 1, "SCREWS", "N.O.", "screws", LabelState.RIGHT, null, ""));
            w.put(lot("lot-0001", "d-1"));
        });
    }

    @AfterEach
    void close() {
        books.close();
    }

    private static Lot lot(String id, String drawer) {
        return new Lot(
                id,
                drawer,
                null,
                "part-neck-screw",
                "neck screw",
                List.of(),
                List.of(),
                "length=12 mm",
                "M3x0.5",
                "steel",
                "",
                LotState.SALVAGED,
                Count.ZERO,
                false,
                false,
                null,
                null,
                "");
    }

    private static Movement move(String id, int qty) {
        return new Movement(id, DAY, "lot-0001", MovementKind.CORRECTION, qty, null, null, null, null, null, "");
    }

    private Count count() {
        return books.find(Lot.class, "lot-0001").orElseThrow().count();
    }

    @Test
    void theCountOfALotIsTheSumOfItsLedger() {
        books.write("put in", w -> w.put(move("v-00001", 7)));
        books.write("take out", w -> w.put(move("v-00002", -3)));
        assertThat(count()).isEqualTo(new Count.Exact(4));
        assertThat(books.wrongBalances()).isEmpty();
    }

    @Test
    void theLedgerCannotBeChangedEvenByHand() throws Exception {
        books.write("put in", w -> w.put(move("v-00001", 7)));
        try (var sql = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("shop.db"));
                var statement = sql.createStatement()) {
            assertThatThrownBy(() -> statement.executeUpdate("update movement set qty = 9"))
                    .hasMessageContaining("only added to");
            assertThatThrownBy(() -> statement.executeUpdate("delete from movement"))
                    .hasMessageContaining("only added to");
        }
    }

    @Test
    void undoRestoresEveryRecordAndAnswersTheLedger() {
        Deed deed = books.write("take two and move", w -> {
            w.put(move("v-00001", -2));
            w.put(new Drawer("d-1", "c-oak", 1, 2, "NECK SCREWS", "N.O.", "screws", LabelState.RIGHT, DAY, ""));
        });
        books.undo(deed.number());
        assertThat(count()).isEqualTo(Count.ZERO);
        assertThat(books.find(Drawer.class, "d-1").orElseThrow().labelAsWritten())
                .isEqualTo("SCREWS");
        assertThat(books.all(Movement.class)).extracting(Movement::qty).containsExactly(-2, 2);
    }

    @Test
    void undoRefusesWhatALaterDeedBuiltUpon() {
        Deed first = books.write("label", w -> relabel(w, "FIRST"));
        Deed second = books.write("label again", w -> relabel(w, "SECOND"));
        assertThatThrownBy(() -> books.undo(first.number()))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("label again");
        books.undo(second.number());
        books.undo(first.number());
        assertThat(books.find(Drawer.class, "d-1").orElseThrow().labelAsWritten())
                .isEqualTo("SCREWS");
    }

    @Test
    void anUndoneDeedCanBeDoneAgain() {
        Deed deed = books.write("label", w -> relabel(w, "NEW"));
        Deed undo = books.undo(deed.number());
        books.undo(undo.number());
        assertThat(books.find(Drawer.class, "d-1").orElseThrow().labelAsWritten())
                .isEqualTo("NEW");
    }

    private static void relabel(Writing w, String label) {
        w.put(new Drawer("d-1", "c-oak", 1, 1, label, "N.O.", "screws", LabelState.RIGHT, null, ""));
    }

    @Test
    void aDeedThatFailsHalfWayLeavesNothing() {
        assertThatThrownBy(() -> books.write("half", w -> {
                    relabel(w, "HALF");
                    w.put(lot("lot-0002", "d-none"));
                }))
                .isInstanceOf(BadInput.class);
        assertThat(books.find(Drawer.class, "d-1").orElseThrow().labelAsWritten())
                .isEqualTo("SCREWS");
        assertThat(books.deeds(9)).extracting(Deed::title).containsExactly("furnish");
    }

    @Test
    void anEntryFileBelongsToItsDeed() {
        Path file = folder.resolve("entries/model/m-x.json");
        Deed deed = books.write("entry", w -> w.entry("model/m-x.json", "{}"));
        assertThat(file).hasContent("{}");
        books.undo(deed.number());
        assertThat(file).doesNotExist();
    }

    @Test
    void oneWriterAndAnyNumberOfReaders() {
        assertThatThrownBy(() -> Books.open(folder, Access.WRITE))
                .isInstanceOf(ShopUnavailable.class)
                .hasMessageContaining("held by another");
        try (Books reader = Books.open(folder, Access.WRITE_IF_FREE)) {
            assertThat(reader.writable()).isFalse();
            assertThat(reader.all(Lot.class)).hasSize(1);
            assertThatThrownBy(() -> reader.write("x", w -> {})).hasMessageContaining("read only");
        }
    }

    @Test
    void numbersAreGivenOnce() {
        books.write("numbers", w -> {
            assertThat(w.nextId(Lot.class)).isEqualTo("lot-0002");
            assertThat(w.nextId(Lot.class)).isEqualTo("lot-0003");
        });
    }

    @Test
    void aFileThatIsNoShopIsNamed() throws Exception {
        Path other = folder.resolve("other");
        Files.createDirectory(other);
        Files.writeString(other.resolve("shop.db"), "a letter, not a database, and long enough to be looked at");
        assertThatThrownBy(() -> Books.open(other, Access.READ))
                .isInstanceOf(ShopUnavailable.class)
                .hasMessageContaining("restore");
        assertThatThrownBy(() -> Books.open(folder.resolve("none"), Access.READ))
                .hasMessageContaining("there is no shop");
        assertThatThrownBy(() -> Books.open(other.resolve("shop.db"), Access.READ))
                .hasMessageContaining("is a file");
    }
}
