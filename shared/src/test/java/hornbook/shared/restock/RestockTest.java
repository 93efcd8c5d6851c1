package hornbook.shared.restock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.DemoShop;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the invented shop is about to run out of; the right answers stand in the project's own trade notes. */
class RestockTest {
    @TempDir
    static Path folder;

    private static Books books;
    private static Restock restock;
    private static RestockAnswer alone;

    @BeforeAll
    static void open() {
        books = DemoShop.open(folder);
        restock = new Restock(books);
        alone = restock.ask(RestockQuestion.BOOKS_ALONE);
    }

    @AfterAll
    static void close() {
        books.close();
    }

    private static Optional<RestockLine> line(RestockAnswer answer, String lot) {
        return answer.lines().stream().filter(l -> lot.equals(l.lot())).findFirst();
    }

    private static RestockAnswer with(Wanted... wanted) {
        return restock.ask(new RestockQuestion(List.of(wanted), Map.of()));
    }

    @Test
    void anEmptyDrawerThatWasInUseIsListedWhateverTheSumSays() {
        RestockLine cork = line(alone, "lot-0766").orElseThrow();
        assertThat(cork.supplier()).isEqualTo("sup-v-coldharbor");
        assertThat(cork.onHand()).isZero();
        assertThat(cork.order()).isEqualTo(5);
        assertThat(cork.pack()).isEqualTo(5);
        assertThat(cork.typicalDays()).isEqualTo(12);
        assertThat(cork.why())
                .isEqualTo("none left; used 25 times in 84 months, last on 2026-08-29; "
                        + "Coldharbor Cork takes 12 days or so: order 5 (packs of 5)");
        assertThat(cork.usesByMonth().stream().mapToInt(n -> n).sum()).isEqualTo(25);
    }

    /** Eight lots stand at nought, each used before. */
    @Test
    void everyEmptyPlaceIsListed() {
        assertThat(alone.lines().stream()
                        .filter(l -> l.onHand() == 0 && !l.why().contains("to avoid"))
                        .map(RestockLine::lot))
                .containsExactlyInAnyOrder(
                        "lot-0087", "lot-0412", "lot-0447", "lot-0557", "lot-0558", "lot-0559", "lot-0766", "lot-0772");
    }

    @Test
    void whatIsOnItsWayIsNotOrderedTwice() {
        assertThat(line(alone, "lot-0748")).isEmpty();
    }

    @Test
    void padsThatAnOpenJobWantsAreListedWithItsNumber() {
        RestockAnswer answer = with(new Wanted("lot-0558", "pad, tan leather, 33.5 mm", null, 1, "j-0240"));
        RestockLine pad = line(answer, "lot-0558").orElseThrow();
        assertThat(pad.wanted()).isEqualTo(1);
        assertThat(pad.order()).isEqualTo(10);
        assertThat(pad.why()).contains("none left, 1 wanted by j-0240");
        assertThat(answer.lines().getFirst()).isEqualTo(pad);
    }

    @Test
    void knownDemandIsServedBeforeAnythingElse() {
        assertThat(line(alone, "lot-0526")).isEmpty();
        assertThat(line(with(new Wanted("lot-0526", "pad", null, 2, "j-0241")), "lot-0526"))
                .hasValueSatisfying(l -> assertThat(l.why()).startsWith("3 left, 2 wanted by j-0241"));
    }

    @Test
    void goodsToAvoidAreNeverListedWhereTheShopHasThemFromElsewhere() {
        assertThat(line(alone, "lot-0877")).isEmpty();
    }

    /** 8 good sticks are left; the 22 to avoid lie in another lot and do not count. */
    @Test
    void theGoodHotMeltDoesNotCountTheBad() {
        RestockLine good = line(with(new Wanted("lot-0876", "hot melt", null, 8, "j-0243")), "lot-0876")
                .orElseThrow();
        assertThat(good.onHand()).isEqualTo(8);
        assertThat(good.order()).isPositive();
    }

    @Test
    void aSupplierToAvoidIsSaidBesideTheLine() {
        assertThat(line(alone, "lot-0759")).hasValueSatisfying(springs -> {
            assertThat(springs.onHand()).isZero();
            assertThat(springs.order()).isZero();
            assertThat(springs.remarks())
                    .anySatisfy(r -> assertThat(r)
                            .contains("Thrumwell Springs, avoid: Stainless sold as blued, 2023", "38 days"));
            assertThat(springs.why()).contains("only 20 to avoid", "find another source first");
        });
    }

    @Test
    void theReserveDoesNotCountAndKeepsakesAreNoStock() {
        RestockLine sleeves = line(with(new Wanted("lot-0933", "sleeve", null, 7, "j-0237")), "lot-0933")
                .orElseThrow();
        assertThat(sleeves.onHand()).isEqualTo(7);
        assertThatThrownBy(() -> with(new Wanted("lot-9999", "sleeve", null, 1, "j-0237")))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("lot-9999, wanted by j-0237, is not in the books");
    }

    @Test
    void whatTheShopKeepsNoLotOfIsOrderedAsWanted() {
        RestockAnswer answer = with(new Wanted(null, "pad, brown, 52 mm", "sup-v-tidegate", 2, "j-0243"));
        assertThat(answer.lines()).anySatisfy(l -> {
            assertThat(l.lot()).isNull();
            assertThat(l.order()).isEqualTo(2);
            assertThat(l.typicalDays()).isEqualTo(9);
            assertThat(l.why())
                    .isEqualTo(
                            "the shop keeps none and j-0243 wants 2; Tidegate Pad & Felt takes 9 days or so: order 2");
        });
    }

    @Test
    void whatKeepsOnlyForAWhileIsSaid() {
        RestockAnswer answer = restock.ask(new RestockQuestion(List.of(), Map.of("sup-pad-single", 6)));
        assertThat(line(answer, "lot-0553").orElseThrow().remarks())
                .anySatisfy(r -> assertThat(r).contains("bought on 2025-12-22 and keeps 6 months"))
                .anySatisfy(r -> assertThat(r).contains("ask for a smaller pack"));
    }

    @Test
    void theListGoesToEachSupplierWithWhatItWouldCost() {
        List<OrderList> orders = restock.orders(alone);
        OrderList cork = orders.stream()
                .filter(o -> o.name().equals("Coldharbor Cork"))
                .findFirst()
                .orElseThrow();
        assertThat(cork.total()).isEqualByComparingTo(new BigDecimal("43.25"));
        assertThat(cork.rows()).allSatisfy(row -> assertThat(row).hasSameSizeAs(OrderList.COLUMNS));
        assertThat(orders)
                .flatExtracting(OrderList::lines)
                .allSatisfy(l -> assertThat(((RestockLine) l).order()).isPositive());
    }

    @Test
    void aShopWithoutHistorySaysSo(@TempDir Path empty) {
        try (Books none = Books.open(empty.resolve("shop"), Access.WRITE)) {
            RestockAnswer answer = new Restock(none).ask(RestockQuestion.BOOKS_ALONE);
            assertThat(answer.lines()).isEmpty();
            assertThat(answer.remarks()).singleElement().asString().startsWith("no use is on record yet");
        }
    }
}
