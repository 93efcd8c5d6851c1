package hornbook.shared.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Lot;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A deed is whole or nothing, whatever happens in it and after it. */
class DeedTest {
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

    @Test
    void anErrorHalfWayLeavesNothing() {
        assertThatThrownBy(() -> books.write("half", w -> {
                    w.put(SmallShop.drawer(1, "HALF"));
                    throw new StackOverflowError();
                }))
                .isInstanceOf(StackOverflowError.class);
        books.write("next", w -> w.put(SmallShop.drawer(2, "NEXT")));
        assertThat(books.all(Drawer.class)).extracting(Drawer::labelAsWritten).containsExactly("SCREWS", "NEXT");
        assertThat(books.deeds(9)).extracting(Deed::title).containsExactly("next", "furnish");
    }

    @Test
    void aListenerThatThrowsNeitherHidesTheDeedNorStopsTheOthers() {
        Logger log = Logger.getLogger(Writer.class.getName());
        log.setLevel(Level.OFF);
        List<Change> heard = new ArrayList<>();
        books.onCommit(changes -> {
            throw new IllegalStateException("the listener's own trouble");
        });
        books.onCommit(heard::addAll);
        books.write("label", w -> w.put(SmallShop.drawer(1, "NEW")));
        assertThat(heard).isEqualTo(books.feedAfter(3)).hasSize(1);
    }

    @Test
    void aDeedWithinADeedIsRefused() {
        assertThatThrownBy(() -> books.write("outer", w -> books.write("inner", v -> {})))
                .hasMessageContaining("within a deed");
        assertThat(books.deeds(9)).hasSize(1);
    }

    @Test
    void nothingIsWrittenOnceTheDeedIsOver() {
        AtomicReference<Writing> kept = new AtomicReference<>();
        books.write("label", kept::set);
        assertThatThrownBy(() -> kept.get().put(SmallShop.drawer(1, "LATE"))).hasMessageContaining("is over");
    }

    @Test
    void aRecordTurnedAwayLeavesTheRestOfTheDeed() {
        books.write("two", w -> {
            assertThatThrownBy(() -> w.put(SmallShop.lot("lot-0002", "d-none"))).isInstanceOf(BadInput.class);
            w.put(SmallShop.lot("lot-0003", "d-1"));
        });
        assertThat(books.all(Lot.class)).extracting(Lot::id).containsExactly(SmallShop.LOT, "lot-0003");
    }

    @Test
    void anAttemptGivenUpRefusesAsTheDeedWouldAndKeepsNothing() {
        books.attempt("try", w -> {
            w.put(SmallShop.drawer(2, "TRIED"));
            assertThatThrownBy(() -> w.put(SmallShop.lot("lot-0002", "d-none"))).isInstanceOf(BadInput.class);
            return false;
        });
        assertThat(books.all(Drawer.class)).hasSize(1);
        assertThat(books.feedEnd()).isEqualTo(3);
    }

    @Test
    void severalQuestionsSeeOneMoment() {
        int[] counts = books.reading(view -> {
            int before = view.all(Lot.class).size();
            books.write("new lot", w -> w.put(SmallShop.lot("lot-0002", "d-1")));
            return new int[] {before, view.all(Lot.class).size(), (int) view.feedEnd()};
        });
        assertThat(counts).containsExactly(1, 1, 3);
        assertThat(books.all(Lot.class)).hasSize(2);
    }

    @Test
    void aDayThatIsNoneIsNoSetting() {
        assertThatThrownBy(() -> books.write("clock", w -> w.setting("as_of", "\"someday\"")))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("someday");
    }

    @Test
    void anEntryThatCannotBeWrittenChangesNothing() throws Exception {
        Files.createDirectories(folder.resolve("entries"));
        Files.writeString(folder.resolve("entries/model"), "a file where a folder should be");
        assertThatThrownBy(() -> books.write("entry", w -> w.entry("model/m-x.json", "{}")))
                .hasMessageContaining("nothing was changed");
        assertThat(books.deeds(9)).hasSize(1);
    }

    @Test
    void closingInOrderLeavesOneFile() {
        books.write("label", w -> w.put(SmallShop.drawer(1, "LAST")));
        books.close();
        assertThat(folder.resolve("shop.db-wal")).doesNotExist();
        books = Books.open(folder, Access.WRITE);
        assertThat(books.find(Drawer.class, "d-1").orElseThrow().labelAsWritten())
                .isEqualTo("LAST");
    }
}
