package hornbook.shared.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.SmallShop;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tin of mixed screws is one lot; what is gauged out of it finds a home (common practice: gauge ten on a slow day). */
class BagBookTest {
    private static final Piece PIVOT = Piece.said(
            "pivot screw, headed nose",
            "part-pivot-screw",
            "length 9; head 3,9 mm",
            "3-48",
            LotState.SALVAGED,
            StandardSizes.load().reader());

    @TempDir
    Path folder;

    private Books books;
    private BagBook bags;
    private String bag;

    @BeforeEach
    void open() {
        books = SmallShop.open(folder);
        bags = new BagBook(books);
        bag = tin(Count.Rough.SOME);
    }

    @AfterEach
    void close() {
        books.close();
    }

    private String tin(Count count) {
        StockBook stock = new StockBook(books);
        Piece mixed = new Piece("mixed screws, tin", "part-screw-unknown", "", null, "", LotState.SALVAGED);
        return stock.after(stock.add(mixed, "d-spool-r6c4", count)).getFirst().id();
    }

    private LotCard lot(String id) {
        return new Stock(books).lot(id).orElseThrow();
    }

    private LotCard known(Deed deed, String from) {
        return new StockBook(books)
                .after(deed).stream()
                        .filter(l -> !l.id().equals(from))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void theBagSaysThatItIsNotKnown() {
        assertThat(lot(bag).heed()).startsWith("not yet known");
        assertThat(lot("lot-0008").heed()).isNull();
    }

    @Test
    void aRoughBagKeepsItsWordAndTheNewLotSaysWhereItCameFrom() {
        Deed deed = bags.sortOut(bag, 2, PIVOT, "d-card-r1c2");
        LotCard made = known(deed, bag);
        assertThat(made.count()).isEqualTo("2");
        assertThat(made.drawer()).isEqualTo("d-card-r1c2");
        assertThat(made.dimensions()).isEqualTo("length=9 mm;head=3,9 mm");
        assertThat(made.thread()).isEqualTo("3-48");
        assertThat(made.ledger().getFirst().note()).contains(bag).contains("mixed screws");
        assertThat(lot(bag).count()).isEqualTo("some");
        assertThat(lot(bag).ledger().getFirst().note()).contains(made.id());
    }

    @Test
    void aCountedBagHasSoManyFewerAndUndoPutsThemBack() {
        String counted = tin(new Count.Exact(9));
        Deed deed = bags.sortOut(counted, 4, PIVOT, "d-card-r1c2");
        String made = known(deed, counted).id();
        assertThat(lot(counted).count()).isEqualTo("5");
        books.undo(deed.number());
        assertThat(lot(counted).count()).isEqualTo("9");
        assertThat(books.find(Lot.class, made)).isEmpty();
        assertThat(books.wrongBalances()).isEmpty();
    }

    @Test
    void aPieceMayGoToALotOfSuch() {
        String counted = tin(new Count.Exact(9));
        bags.sortOutInto(counted, 1, "lot-0933");
        assertThat(lot("lot-0933").count()).isEqualTo("8");
        assertThat(lot(counted).count()).isEqualTo("8");
        assertThat(lot("lot-0933").ledger().getFirst().note()).contains(counted);
    }

    @Test
    void whatCannotBeIsRefusedAndNothingIsLeftBehind() {
        String counted = tin(new Count.Exact(3));
        assertThatThrownBy(() -> bags.sortOut(counted, 4, PIVOT, "d-card-r1c2")).hasMessageContaining("3 by the books");
        assertThatThrownBy(() -> bags.sortOut(counted, 0, PIVOT, "d-card-r1c2")).hasMessageContaining("one or more");
        assertThatThrownBy(() -> bags.sortOut(counted, 1, PIVOT, "nowhere")).hasMessageContaining("nowhere");
        assertThatThrownBy(() -> bags.sortOutInto(counted, 1, counted)).hasMessageContaining("itself");
        assertThatThrownBy(() -> bags.sortOutInto(counted, 1, "lot-0496")).hasMessageContaining("keepsake");
        assertThat(lot(counted).count()).isEqualTo("3");
    }

    @Test
    void aPieceIsReadAsItIsSaidAndRefusedWhereItsSizeIsNone() {
        assertThatThrownBy(() -> Piece.said(
                        "screw",
                        "",
                        "rather long",
                        "",
                        LotState.NEW,
                        StandardSizes.load().reader()))
                .hasMessageContaining("write length 12 mm");
        assertThatThrownBy(() -> Piece.said(
                        "screw",
                        "",
                        "",
                        "3-47",
                        LotState.NEW,
                        StandardSizes.load().reader()))
                .hasMessageContaining("3-48");
    }

    /** A pad of 18.6 mm lies nearest the tray of 18.5, then of 19 (sizes of the tray in the small shop). */
    @Test
    void likePiecesAreNamedNearestFirst() {
        Piece pad = Piece.said(
                "pad",
                "sup-pad-single",
                "size 18.6 mm; thickness 4 mm",
                "",
                LotState.NEW,
                StandardSizes.load().reader());
        List<LotCard> near = new Alike(books, StandardSizes.load().reader()).to(pad);
        assertThat(near).extracting(LotCard::id).startsWith("lot-0528", "lot-0529");
        assertThat(near).hasSize(5);
    }

    @Test
    void anotherThreadIsNotAlike() {
        Alike alike = new Alike(books, StandardSizes.load().reader());
        Lot pivot = books.find(Lot.class, "lot-0008").orElseThrow();
        assertThat(alike.to(new Piece("", pivot.item(), "", pivot.thread(), "", LotState.NEW)))
                .extracting(LotCard::id)
                .contains("lot-0008");
        assertThat(alike.to(new Piece("", pivot.item(), "", "6 BA", "", LotState.NEW)))
                .extracting(LotCard::id)
                .doesNotContain("lot-0008");
    }
}
