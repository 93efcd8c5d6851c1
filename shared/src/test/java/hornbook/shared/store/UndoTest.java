package hornbook.shared.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Lot;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UndoTest {
    @TempDir
    Path folder;

    private Books books;

    @BeforeEach
    void open() {
        books = SmallShop.in(folder);
    }

    @AfterEach
    void close() {
        books.close();
    }

    private long label(String label) {
        return books.write(label, w -> w.put(SmallShop.drawer(1, label))).number();
    }

    private long undo(long deed) {
        return books.undo(deed).number();
    }

    private String label() {
        return books.find(Drawer.class, "d-1").orElseThrow().labelAsWritten();
    }

    @Test
    void whatIsDoneAgainCanBeUndoneAgainFromEitherEnd() {
        long first = label("FIRST");
        long back = undo(first);
        long again = undo(back);
        assertThat(label()).isEqualTo("FIRST");
        assertThat(books.deed(again).orElseThrow().title()).isEqualTo("do again “FIRST”");
        undo(again);
        assertThat(label()).isEqualTo("SCREWS");
        assertThat(books.deed(first).orElseThrow().undoneBy()).isEqualTo(back);
        assertThatThrownBy(() -> undo(first)).hasMessageContaining("undone already");
        undo(back);
        assertThat(label()).isEqualTo("FIRST");
    }

    @Test
    void aDeedIsNotDoneAgainWhereOneBeforeItWasUndoneMeanwhile() {
        long first = label("FIRST");
        long second = label("SECOND");
        long backSecond = undo(second);
        undo(first);
        assertThatThrownBy(() -> undo(backSecond)).isInstanceOf(BadInput.class).hasMessageContaining("undo “FIRST”");
        assertThat(label()).isEqualTo("SCREWS");
    }

    @Test
    void laterDeedsThatCancelOutDoNotBar() {
        long first = label("FIRST");
        long back = undo(label("SECOND"));
        undo(undo(back));
        undo(first);
        assertThat(label()).isEqualTo("SCREWS");
    }

    @Test
    void aRecordThatOthersWereBuiltOnIsNotTakenAway() {
        long made = books.write("new drawer", w -> w.put(SmallShop.drawer(2, "RODS")))
                .number();
        long filled = books.write("new lot", w -> w.put(SmallShop.lot("lot-0002", "d-2")))
                .number();
        assertThatThrownBy(() -> undo(made)).isInstanceOf(BadInput.class).hasMessageContaining("new lot");
        undo(filled);
        undo(made);
        assertThat(books.find(Drawer.class, "d-2")).isEmpty();
    }

    @Test
    void aLotThatStockWasTakenFromIsNotTakenAway() {
        long furnished = 1;
        long moved =
                books.write("use two", w -> w.put(SmallShop.move("v-0001", -2))).number();
        assertThatThrownBy(() -> undo(furnished)).hasMessageContaining("use two");
        undo(moved);
        undo(furnished);
        assertThat(books.all(Lot.class)).isEmpty();
        assertThat(books.all(Cabinet.class)).isEmpty();
    }

    @Test
    void aLotIsNotPutBackIntoADrawerRetiredMeanwhile() {
        long moved = books.write("move", w -> {
                    w.put(SmallShop.drawer(2, "RODS"));
                    w.put(SmallShop.lot(SmallShop.LOT, "d-2"));
                })
                .number();
        books.write("away with it", w -> w.retire(Drawer.class, "d-1"));
        assertThatThrownBy(() -> undo(moved)).hasMessageContaining("drawer d-1 is retired");
    }

    @Test
    void nothingLiveNamesAnythingRetired() {
        assertThatThrownBy(() -> books.write("x", w -> w.retire(Drawer.class, "d-1")))
                .hasMessageContaining("lot lot-0001 still names it");
        books.write("both", w -> {
            w.retire(Drawer.class, "d-1");
            w.retire(Lot.class, SmallShop.LOT);
        });
        assertThatThrownBy(() -> books.write("x", w -> w.bringBack(Lot.class, SmallShop.LOT)))
                .hasMessageContaining("drawer d-1 is retired");
        books.write("back", w -> {
            w.bringBack(Lot.class, SmallShop.LOT);
            w.bringBack(Drawer.class, "d-1");
        });
        assertThat(books.all(Lot.class)).hasSize(1);
    }
}
