package hornbook.shared.stock;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.exchange.SmallShop;
import hornbook.shared.shop.LabelState;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FurnitureTest {
    @TempDir
    static Path folder;

    private static Books books;
    private static List<CabinetPlan> plans;

    @BeforeAll
    static void open() {
        books = SmallShop.open(folder);
        plans = new Furniture(books).plans();
    }

    @AfterAll
    static void close() {
        books.close();
    }

    @Test
    void eachCabinetHasItsDrawersByRowAndColumn() {
        CabinetPlan chest = plan("c-apoth");
        assertThat(chest.rows()).isEqualTo(8);
        assertThat(chest.drawers())
                .allMatch(d -> d.row() >= 1 && d.row() <= 8 && d.column() >= 1 && d.column() <= 8)
                .extracting(d -> d.row() * 100 + d.column())
                .isSorted()
                .doesNotHaveDuplicates();
    }

    @Test
    void aDrawerShowsItsLabelAndHowManyLotsLieBehindIt() {
        DrawerFront front = front("c-apoth", "d-apoth-r4c8");
        assertThat(front.label()).isEqualTo("FRENCH POSTS, ARMS");
        assertThat(front.lots())
                .isEqualTo(new Stock(books)
                        .drawer("d-apoth-r4c8")
                        .orElseThrow()
                        .lots()
                        .size());
        assertThat(front.empty()).isFalse();
    }

    @Test
    void aDriftedLabelIsToldBeforeTheDrawerIsPulled() {
        DrawerFront front = front("c-spool", "d-spool-r6c4");
        assertThat(front.labelState()).isEqualTo(LabelState.DRIFTED);
        assertThat(front.heed()).contains("put it right");
    }

    @Test
    void whereSomethingLiesTheDrawerIsNotEmpty() {
        Stock stock = new Stock(books);
        assertThat(plans.stream().flatMap(plan -> plan.drawers().stream()))
                .isNotEmpty()
                .allSatisfy(front -> {
                    DrawerCard card = stock.drawer(front.id()).orElseThrow();
                    boolean nothing = card.tools().isEmpty()
                            && card.lots().stream().allMatch(lot -> lot.count().equals("0"));
                    assertThat(front.empty()).as(front.id()).isEqualTo(nothing);
                });
    }

    @Test
    void aDrawerWhoseLotsAreUsedUpIsEmpty() {
        DrawerFront cork = front("c-spool", "d-spool-r4c4");
        assertThat(cork.label()).isEqualTo("cork 1/16\"");
        assertThat(cork.lots()).isPositive();
        assertThat(cork.empty()).isTrue();
    }

    private static CabinetPlan plan(String id) {
        return plans.stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
    }

    private static DrawerFront front(String cabinet, String id) {
        return plan(cabinet).drawers().stream()
                .filter(d -> d.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
