package hornbook.shared.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.SmallShop;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.OpenOrder;
import hornbook.shared.shop.PartUsed;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.supply.Judged;
import hornbook.shared.supply.Verdict;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every deed on stock can be undone; sums of the ledger stay equal to counts whatever is done. */
class StockBookTest {
    @TempDir
    Path folder;

    private Books books;
    private StockBook stock;

    @BeforeEach
    void open() {
        books = SmallShop.open(folder);
        stock = new StockBook(books);
    }

    @AfterEach
    void close() {
        books.close();
    }

    private String count(String lot) {
        return books.find(Lot.class, lot).orElseThrow().count().written();
    }

    @Test
    void takingForAJobIsNotedOnTheJobAndUndoneWhole() {
        int before = books.where(PartUsed.class, "job", "j-0237").size();
        Deed deed = stock.use(new Taking("lot-0933", 2, "j-0237", "bearing sleeves", false));
        assertThat(count("lot-0933")).isEqualTo("5");
        assertThat(books.where(PartUsed.class, "job", "j-0237")).hasSize(before + 1);
        books.undo(deed.number());
        assertThat(count("lot-0933")).isEqualTo("7");
        assertThat(books.where(PartUsed.class, "job", "j-0237")).hasSize(before);
    }

    @Test
    void aKeepsakeAReserveAndMoreThanThereIsAreRefused() {
        assertThatThrownBy(() -> stock.use(new Taking("lot-0496", 1, null, "", true)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("keepsake");
        assertThatThrownBy(() -> stock.use(new Taking("lot-0933", 8, null, "", false)))
                .hasMessageContaining("7 by the books");
        stock.setAside("lot-0933", true);
        assertThatThrownBy(() -> stock.use(new Taking("lot-0933", 1, null, "", false)))
                .hasMessageContaining("--reserve");
        stock.use(new Taking("lot-0933", 1, null, "", true));
        assertThat(count("lot-0933")).isEqualTo("6");
    }

    @Test
    void aRoughWordBecomesANumberOnlyByCounting() {
        assertThat(count("lot-0008")).isEqualTo("some");
        stock.use(new Taking("lot-0008", 1, null, "", false));
        assertThat(count("lot-0008")).isEqualTo("some");
        stock.count("lot-0008", new Count.Exact(11));
        assertThat(count("lot-0008")).isEqualTo("11");
        stock.count("lot-0008", Count.Rough.FEW);
        assertThat(count("lot-0008")).isEqualTo("few");
    }

    @Test
    void aSplitOffLotLiesElsewhereAndTheSumStays() {
        Deed deed = stock.split("lot-0933", 3, "d-spool-r6c4");
        List<LotCard> after = stock.after(deed);
        assertThat(after).extracting(LotCard::count).containsExactlyInAnyOrder("4", "3");
        String made = after.stream()
                .map(LotCard::id)
                .filter(id -> !id.equals("lot-0933"))
                .findFirst()
                .orElseThrow();
        stock.join(made, "lot-0933");
        assertThat(count("lot-0933")).isEqualTo("7");
        assertThat(books.find(Lot.class, made)).isEmpty();
    }

    @Test
    void whatIsOutOfUseIsListedWhereItLayAndBroughtBack() {
        String lies = books.find(Lot.class, "lot-0933").orElseThrow().lies();
        stock.retire("lot-0933");
        assertThat(new Stock(books).drawer(lies).orElseThrow().outOfUse())
                .extracting(LotLine::id)
                .containsExactly("lot-0933");
        stock.bringBack("lot-0933");
        assertThat(count("lot-0933")).isEqualTo("7");
        assertThat(new Stock(books).drawer(lies).orElseThrow().outOfUse()).isEmpty();
    }

    @Test
    void strippingMovesEveryLotInOneDeed() {
        List<LotLine> there =
                new Stock(books).drawer("d-apoth-r4c8").orElseThrow().lots();
        assertThat(there).isNotEmpty();
        Deed deed = stock.strip("d-apoth-r4c8", "d-spool-r6c4");
        assertThat(new Stock(books).drawer("d-apoth-r4c8").orElseThrow().lots()).isEmpty();
        assertThat(new Stock(books).drawer("d-spool-r6c4").orElseThrow().lots()).containsAll(there);
        books.undo(deed.number());
        assertThat(new Stock(books).drawer("d-apoth-r4c8").orElseThrow().lots()).isEqualTo(there);
        assertThatThrownBy(() -> stock.strip("d-apoth-r4c8", "d-apoth-r4c8")).hasMessageContaining("itself");
    }

    @Test
    void aDeedIsNamedAsAPersonCallsTheLot() {
        Deed deed = stock.use(new Taking("lot-0933", 2, "j-0237", "", false));
        String title = books.find(Lot.class, "lot-0933").orElseThrow().title();
        assertThat(deed.title()).isEqualTo("take 2 of " + title + " for j-0237");
        assertThat(books.undoLast().title()).contains(title);
    }

    /** The short form; {@link RandomHands} has the long one. */
    @Test
    void ledgerSumsEqualCountsAfterAnySequenceWithUndoBetween() {
        RandomHands.Outcome outcome = RandomHands.run(books, 200, 20260930, 1);
        assertThat(outcome.wrong()).isEmpty();
        assertThat(outcome.done()).isGreaterThan(90);
    }

    /** Part of an order comes, part of it as a substitute in another lot, each with its verdict: one deed each. */
    @Test
    void goodsInPartlyAndAsASubstituteKeepTheRestOfTheOrderOpen() {
        OpenOrder order = new OpenOrder("o-0901", "lot-0933", 10, "sup-v-marlbeck", books.today());
        books.write("order", w -> w.put(order));
        stock.receive(
                "lot-0933",
                new Receipt(4, null, "o-0901", null, null, ""),
                new Judged(Verdict.KEEP, "threads clean, all four run home"));
        assertThat(count("lot-0933")).isEqualTo("11");
        assertThat(books.find(OpenOrder.class, "o-0901").orElseThrow().qty()).isEqualTo(6);
        Deed substitute = stock.receive(
                "lot-0510",
                new Receipt(6, null, "o-0901", null, null, "a substitute, not said"),
                new Judged(Verdict.AVOID, "pin holes too wide"));
        assertThat(books.find(OpenOrder.class, "o-0901")).isEmpty();
        assertThat(books.find(Lot.class, "lot-0510").orElseThrow().note())
                .endsWith("verdict: avoid, " + books.today() + ": pin holes too wide");
        books.undo(substitute.number());
        assertThat(books.find(OpenOrder.class, "o-0901").orElseThrow().qty()).isEqualTo(6);
        assertThat(books.find(Lot.class, "lot-0510").orElseThrow().note()).doesNotContain("verdict");
    }

    @Test
    void aVerdictWithoutAReasonIsRefused() {
        assertThatThrownBy(() -> new Judged(Verdict.AVOID, " ")).isInstanceOf(BadInput.class);
    }
}
