package hornbook.shared.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.SmallShop;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockTest {
    @TempDir
    static Path folder;

    private static Books books;
    private static Stock stock;

    @BeforeAll
    static void open() {
        books = SmallShop.open(folder);
        stock = new Stock(books);
    }

    @AfterAll
    static void close() {
        books.close();
    }

    @ParameterizedTest
    @CsvSource({
        "d-apoth-r4c8",
        "'FRENCH POSTS, ARMS'",
        "french posts",
        "c-apoth r4c8",
        "apoth r4c8",
        "apothecary chest r4c8"
    })
    void aDrawerIsFoundByWhateverAPersonCallsIt(String called) {
        assertThat(stock.drawer(called).orElseThrow().id()).isEqualTo("d-apoth-r4c8");
    }

    @Test
    void aDrawerShowsWhatIsReallyInIt() {
        DrawerCard card = stock.drawer("d-apoth-r4c8").orElseThrow();
        assertThat(card.label()).isEqualTo("FRENCH POSTS, ARMS");
        assertThat(card.lots()).extracting(LotLine::id).contains("lot-0933");
    }

    @Test
    void aDriftedLabelIsNamed() {
        assertThat(stock.drawer("d-spool-r6c4").orElseThrow().heed()).contains("put it right");
    }

    @Test
    void aToolLiesWhereItsDrawerSays() {
        books.all(hornbook.shared.shop.ShopTool.class)
                .forEach(tool -> assertThat(
                                stock.placeOfTool(tool.id()).orElseThrow().tools())
                        .extracting(ToolLine::id)
                        .contains(tool.id()));
        assertThat(stock.placeOfTool("tool-none")).isEmpty();
    }

    @Test
    void aKeepsakeSaysSo() {
        assertThat(stock.lot("lot-0496").orElseThrow().heed()).contains("never use");
    }

    @Test
    void aLotNamesItsDrawerAndItsLedger() {
        LotCard lot = stock.lot("lot-0933").orElseThrow();
        assertThat(lot.drawer()).isEqualTo("d-apoth-r4c8");
        assertThat(lot.count()).isEqualTo("7");
        assertThat(lot.ledger())
                .isNotEmpty()
                .isSortedAccordingTo((a, b) -> b.day().compareTo(a.day()));
    }

    @Test
    void aLabelThatSeveralDrawersBearIsAskedAbout() {
        assertThatThrownBy(() -> stock.drawer("a")).isInstanceOf(BadInput.class).hasMessageContaining("name one");
    }

    @Test
    void whatIsNotThereIsNotFound() {
        assertThat(stock.drawer("no such drawer")).isEmpty();
        assertThat(stock.lot("lot-9999")).isEmpty();
    }
}
