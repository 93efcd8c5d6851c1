package hornbook.shared.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.restock.OnTheWay;
import hornbook.shared.restock.OrderBook;
import hornbook.shared.restock.Restock;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.stock.CabinetBook;
import hornbook.shared.stock.Piece;
import hornbook.shared.stock.Receipt;
import hornbook.shared.stock.StockBook;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A shop begun with nothing: a supplier is made, ordered from, and sends goods; all of it can be taken back. */
class SupplierBookTest {
    private static final SupplierSaid NOTHING = new SupplierSaid(null, null, null, null, null);

    @TempDir
    Path folder;

    private Books books;
    private SupplierBook book;
    private Suppliers suppliers;

    @BeforeEach
    void open() {
        books = Books.open(folder, Access.WRITE, LocalDate.of(2026, 9, 30));
        book = new SupplierBook(books);
        suppliers = new Suppliers(books);
    }

    @AfterEach
    void close() {
        books.close();
    }

    private static SupplierSaid felts(String days) {
        return new SupplierSaid("Harrowgate Felts", "upriver", days, "by the sheet", new BigDecimal("25"));
    }

    @Test
    void aSupplierIsMadeChangedRetiredAndBroughtBackAndEachTakenBack() {
        book.add(felts("10"));
        SupplierCard made = suppliers.card("harrow").orElseThrow();
        assertThat(made.id()).isEqualTo("sup-v-harrowgate-felts");
        assertThat(made.typicalDays()).isEqualTo(10);
        assertThat(made.smallestOrder()).isEqualByComparingTo("25");
        book.change(made.id(), new SupplierSaid(null, null, "8 9 12", null, BigDecimal.ZERO));
        assertThat(suppliers.card(made.id()).orElseThrow().typicalDays()).isEqualTo(9);
        assertThat(suppliers.card(made.id()).orElseThrow().smallestOrder()).isNull();
        books.undoLast();
        assertThat(suppliers.card(made.id()).orElseThrow()).isEqualTo(made);
        book.retire("Harrowgate Felts");
        assertThat(suppliers.all()).isEmpty();
        assertThatThrownBy(() -> suppliers.named("harrow")).hasMessageContaining("hornbook supplier new");
        books.undoLast();
        book.retire("Harrowgate Felts");
        book.bringBack(made.id());
        assertThat(suppliers.all()).containsExactly(made);
    }

    @Test
    void goodsOrderedComeInAndTheLotKnowsWhereItIsBought() {
        new CabinetBook(books).add("Chest", 1, 1, "");
        StockBook stock = new StockBook(books);
        Piece felt = new Piece("felt 2 mm", "", "", null, "", LotState.NEW);
        stock.add(felt, "Chest r1c1", Count.ZERO);
        stock.add(new Piece("felt 3 mm", "", "", null, "", LotState.NEW), "Chest r1c1", Count.ZERO);
        String lot = books.all(Lot.class).getFirst().id();
        String other = books.all(Lot.class).getLast().id();
        book.add(felts("10"));
        new OrderBook(books).wentOut("harrowgate", Map.of(lot, 6));
        OnTheWay coming = new Restock(books).onTheWay().getFirst();
        assertThat(coming.expected()).isEqualTo(LocalDate.of(2026, 10, 10));
        assertThatThrownBy(() -> book.retire("harrowgate")).hasMessageContaining(coming.order());
        assertThatThrownBy(() -> stock.receive(other, new Receipt(2, null, coming.order(), null, null, "")))
                .hasMessageContaining("is for felt 2 mm, not for felt 3 mm");
        stock.receive(other, new Receipt(2, null, coming.order(), null, null, "a substitute"));
        assertThat(new Restock(books).onTheWay().getFirst().pieces()).isEqualTo(4);
        books.undoLast();
        stock.receive(lot, new Receipt(4, null, coming.order(), null, new BigDecimal("1.20"), ""));
        assertThat(new Restock(books).onTheWay().getFirst().pieces()).isEqualTo(2);
        assertThat(books.find(Lot.class, lot).orElseThrow().supplier()).isEqualTo("sup-v-harrowgate-felts");
        books.undoLast();
        books.undoLast();
        assertThat(books.find(Lot.class, lot).orElseThrow().supplier()).isNull();
        stock.receive(lot, new Receipt(1, "Harrowgate Felts", null, null, null, ""));
        assertThat(books.find(Lot.class, lot).orElseThrow().supplier()).isEqualTo("sup-v-harrowgate-felts");
        assertThatThrownBy(() -> stock.receive(lot, new Receipt(1, "NOBODY", null, null, null, "")))
                .hasMessageContaining("there is no supplier “NOBODY”")
                .hasMessageContaining("hornbook supplier new");
        assertThatThrownBy(() -> stock.receive(lot, new Receipt(1, null, null, null, new BigDecimal("-1"), "")))
                .hasMessageContaining("no price");
    }

    @ParameterizedTest
    @ValueSource(strings = {"soon", "-3", "400", "2.5", "10 x"})
    void whatIsNoNumberOfDaysIsRefused(String days) {
        assertThatThrownBy(() -> book.add(felts(days))).hasMessageContaining("days");
        assertThat(suppliers.all()).isEmpty();
    }

    @Test
    void aNameThatIsThereOrEmptyAndAChangeOfNothingAreRefused() {
        book.add(felts("10"));
        assertThatThrownBy(() -> book.add(felts("3"))).hasMessageContaining("already");
        assertThatThrownBy(() -> book.add(new SupplierSaid(" ", null, null, null, null)))
                .hasMessageContaining("no name");
        assertThatThrownBy(() -> book.change("harrow", NOTHING)).hasMessageContaining("nothing is said");
    }
}
