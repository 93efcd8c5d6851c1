package hornbook.viewer.restock;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.restock.OnTheWay;
import hornbook.shared.restock.OrderList;
import hornbook.shared.restock.RestockLine;
import hornbook.shared.shop.Lot;
import hornbook.shared.supply.Verdict;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Story 7 of the project's trade notes on the demonstration shop, without a window. */
class RestockModelTest {
    @TempDir
    Path folder;

    private Workshop shop;
    private RestockModel model;

    @BeforeEach
    void open() {
        shop = DemoShop.in(folder.resolve("shop"));
        model = new RestockModel(Work.atOnce(), shop.restock(), shop::wanted, shop.orderBook(), shop.stockBook());
        model.refresh();
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private OrderList orderTo(String supplier) {
        return model.view().list().orders().stream()
                .filter(order -> supplier.equals(order.supplier()))
                .findFirst()
                .orElseThrow();
    }

    private @Nullable RestockLine line(String lot) {
        return model.view().list().answer().lines().stream()
                .filter(line -> lot.equals(line.lot()))
                .findFirst()
                .orElse(null);
    }

    @Test
    void theSpoiledCorkIsOrderedAndTheAvoidedSpringsAreNot() {
        assertThat(orderTo("sup-v-coldharbor").lines())
                .extracting(RestockLine::lot)
                .containsExactly("lot-0766");
        assertThat(model.view().first())
                .filteredOn(line -> "sup-v-thrumwell".equals(line.supplier()))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.why()).contains("find another source first"));
    }

    @Test
    void whatWentOutIsOnTheWayAndCanBeTakenBack() {
        int before = model.view().list().coming().size();
        model.ordered(orderTo("sup-v-coldharbor"));
        assertThat(model.view().list().orders()).extracting(OrderList::supplier).doesNotContain("sup-v-coldharbor");
        assertThat(model.view().list().coming()).hasSize(before + 1);
        shop.books().undo(shop.books().deeds(1).getFirst().number());
        model.refresh();
        assertThat(model.view().list().coming()).hasSize(before);
        assertThat(orderTo("sup-v-coldharbor").lines()).hasSize(1);
    }

    private OnTheWay springs() {
        return model.view().list().coming().stream()
                .filter(order -> order.order().equals("o-0301"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void goodsInPartlyLeaveTheRestOnOrder() {
        OnTheWay order = springs();
        model.unpack(order);
        model.take(new GoodsIn("8", "", "0,85", Verdict.KEEP, "none snapped in ten"));
        assertThat(model.view().trouble()).isNull();
        assertThat(model.view().unpacking()).isNull();
        assertThat(springs().pieces()).isEqualTo(order.pieces() - 8);
        assertThat(shop.books().find(Lot.class, order.lot()).orElseThrow().note())
                .endsWith("verdict: keep, 2026-09-30: none snapped in ten");
    }

    @Test
    void aSubstituteGoesIntoItsOwnLot() {
        OnTheWay order = springs();
        String before =
                shop.books().find(Lot.class, order.lot()).orElseThrow().count().written();
        model.unpack(order);
        model.take(new GoodsIn("12", "lot-0750", "", null, ""));
        assertThat(model.view().list().coming()).extracting(OnTheWay::order).doesNotContain("o-0301");
        assertThat(shop.books()
                        .find(Lot.class, order.lot())
                        .orElseThrow()
                        .count()
                        .written())
                .isEqualTo(before);
    }

    @Test
    void whatCannotBeReadIsSaidAndTheSheetStaysOpen() {
        for (GoodsIn bad : List.of(
                new GoodsIn("a dozen", "", "", null, ""),
                new GoodsIn("12", "", "cheap", null, ""),
                new GoodsIn("12", "lot-9999", "", null, ""),
                new GoodsIn("12", "", "", Verdict.AVOID, " "),
                new GoodsIn("0", "", "", null, ""))) {
            model.unpack(springs());
            model.take(bad);
            assertThat(model.view().trouble()).as(bad.toString()).isNotBlank();
            assertThat(model.view().unpacking()).as(bad.toString()).isNotNull();
        }
        assertThat(springs().pieces()).isEqualTo(12);
    }

    @Test
    void theListIsSavedAndAFileThatCannotBeWrittenIsSaid() throws Exception {
        Path csv = folder.resolve("order.csv");
        model.save(csv, (answer, orders, file) -> hornbook.viewer.paper.order.OrderSheet.write(orders, file));
        assertThat(Files.readString(csv)).startsWith("supplier,lot,what,order").contains("lot-0766");
        model.save(
                folder.resolve("none/order.csv"),
                (answer, orders, file) -> hornbook.viewer.paper.order.OrderSheet.write(orders, file));
        assertThat(model.view().trouble()).contains("cannot be written");
    }
}
