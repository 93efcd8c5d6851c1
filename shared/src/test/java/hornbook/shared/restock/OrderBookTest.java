package hornbook.shared.restock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.setting.Setting;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.OpenOrder;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.supply.Verdict;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ordered, judged, undone, slipped: the list follows. */
class OrderBookTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 30);

    @TempDir
    Path folder;

    private Books books;
    private Restock restock;

    @BeforeEach
    void aDrawerWithSprings() {
        books = Books.open(folder, Access.WRITE, DAY);
        books.write("furnish", w -> {
            w.put(new Cabinet("c-oak", "Oak chest", 2, 2, "window", ""));
            w.put(new Drawer("d-1", "c-oak", 1, 1, "SPRINGS", "N.O.", "springs", LabelState.RIGHT, null, ""));
            w.put(new Supplier("sup-v-new", "Newcome Wire", "", "", "", "keep", ""));
            w.put(lot("lot-0001", Count.ZERO));
        });
        move("v-00001", MovementKind.OPENING, 6, DAY.minusMonths(12));
        for (int i = 1; i <= 6; i++) {
            move("v-0000" + (i + 1), MovementKind.USE, -1, DAY.minusMonths(13 - 2 * i));
        }
        restock = new Restock(books);
    }

    @AfterEach
    void close() {
        books.close();
    }

    private static Lot lot(String id, Count count) {
        return new Lot(
                id,
                "d-1",
                null,
                "part-needle-spring",
                "spring " + id,
                List.of(),
                List.of(),
                "",
                null,
                "steel",
                "blued",
                LotState.NEW,
                count,
                false,
                false,
                "sup-v-new",
                12,
                "");
    }

    private void move(String id, MovementKind kind, int qty, LocalDate day) {
        move(id, "lot-0001", kind, qty, day);
    }

    private Deed move(String id, String lot, MovementKind kind, int qty, LocalDate day) {
        boolean receipt = kind == MovementKind.RECEIPT;
        @Nullable String supplier = receipt ? "sup-v-new" : null;
        @Nullable LocalDate ordered = receipt ? day.minusDays(10) : null;
        return books.write(
                id, w -> w.put(new Movement(id, day, lot, kind, qty, null, supplier, null, ordered, null, "")));
    }

    private Optional<RestockLine> line(String lot) {
        return restock.ask(RestockQuestion.BOOKS_ALONE).lines().stream()
                .filter(l -> lot.equals(l.lot()))
                .findFirst();
    }

    @Test
    void whatWasOrderedIsNotOrderedAgain() {
        RestockLine springs = line("lot-0001").orElseThrow();
        assertThat(springs.order()).isEqualTo(12);
        new OrderBook(books).ordered("sup-v-new", List.of(springs));
        assertThat(books.all(OpenOrder.class))
                .singleElement()
                .satisfies(o -> assertThat(o.qty()).isEqualTo(12));
        RestockLine after = line("lot-0001").orElseThrow();
        assertThat(after.order()).isZero();
        assertThat(after.why()).contains("12 on order since 2026-09-30", "wait for what is on its way");
        assertThatThrownBy(() -> new OrderBook(books).ordered("sup-v-new", List.of(after)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("nothing is to be ordered");
    }

    @Test
    void aSupplierWithoutDeliveriesIsSaidInOneLine() {
        assertThat(line("lot-0001").orElseThrow().remarks())
                .containsExactly("Newcome Wire: no delivery on record, so anything from 7 to 21 days is "
                        + "reckoned with: ask how long");
    }

    @Test
    void aVerdictChangesTheListAndUndoingItChangesItBack() {
        RestockLine before = line("lot-0001").orElseThrow();
        Deed deed = new OrderBook(books).supplier("sup-v-new", Verdict.AVOID, "Snapped at once.");
        RestockLine avoided = line("lot-0001").orElseThrow();
        assertThat(avoided.order()).isZero();
        assertThat(avoided.remarks()).anySatisfy(r -> assertThat(r).contains("Snapped at once."));
        books.undo(deed.number());
        assertThat(line("lot-0001")).contains(before);
    }

    @Test
    void aLotsOwnVerdictGoesBeforeItsSuppliers() {
        OrderBook book = new OrderBook(books);
        book.supplier("sup-v-new", Verdict.AVOID, "Snapped at once.");
        book.lot("lot-0001", Verdict.KEEP, "This batch bends as it should.");
        assertThat(line("lot-0001").orElseThrow().order()).isEqualTo(12);
        assertThatThrownBy(() -> book.lot("lot-0001", Verdict.AVOID, " ")).hasMessageContaining("needs its reason");
        assertThatThrownBy(() -> book.supplier("sup-v-none", Verdict.KEEP, "x"))
                .hasMessageContaining("there is no supplier “sup-v-none”");
    }

    @Test
    void aTakingThatWasUndoneIsNoUse() {
        int[] before = months();
        Deed deed = move("v-00090", "lot-0001", MovementKind.USE, -1, DAY);
        assertThat(months()).isNotEqualTo(before);
        books.undo(deed.number());
        assertThat(months()).isEqualTo(before);
    }

    private int[] months() {
        return line("lot-0001").orElseThrow().usesByMonth().stream()
                .mapToInt(n -> n)
                .toArray();
    }

    @Test
    void aCountBelowNoughtIsNamedAndNothingOrderedOnItsWord() {
        move("v-00091", MovementKind.USE, -3, DAY);
        RestockAnswer answer = restock.ask(RestockQuestion.BOOKS_ALONE);
        assertThat(answer.remarks())
                .singleElement()
                .satisfies(r -> assertThat(r).contains("lot-0001", "its ledger says -3, which cannot be: count it"));
        assertThat(line("lot-0001").orElseThrow().why()).contains("the ledger says -3", "count it first");
    }

    @Test
    void aCountByEyeAsksForALookFirst() {
        books.write("by eye", w -> w.put(lot("lot-0001", Count.Rough.FEW)));
        assertThat(line("lot-0001")).hasValueSatisfying(l -> {
            assertThat(l.counted()).isEqualTo("few");
            assertThat(l.order()).isZero();
            assertThat(l.why()).startsWith("counted only as few").endsWith("look first");
        });
        books.write("by eye", w -> w.put(lot("lot-0001", Count.Rough.PLENTY)));
        assertThat(line("lot-0001")).isEmpty();
    }

    @Test
    void withoutAnyUseOnlyWhatIsWantedCountsAndItSaysSo() {
        books.write("new", w -> w.put(lot("lot-0002", Count.ZERO)));
        assertThat(line("lot-0002")).isEmpty();
        RestockQuestion wanted =
                new RestockQuestion(List.of(new Wanted("lot-0002", "spring", null, 2, null)), Map.of());
        assertThat(restock.ask(wanted).lines()).anySatisfy(l -> {
            assertThat(l.lot()).isEqualTo("lot-0002");
            assertThat(l.why()).contains("no use on record, so only what is wanted counts");
            assertThat(l.order()).isEqualTo(12);
        });
    }

    @Test
    void aSmallestOrderIsHeeded() {
        move("v-00092", MovementKind.RECEIPT, 1, DAY);
        books.write("price", w -> {
            w.put(new Movement(
                    "v-00093",
                    DAY,
                    "lot-0001",
                    MovementKind.RECEIPT,
                    1,
                    null,
                    "sup-v-new",
                    null,
                    DAY.minusDays(3),
                    new java.math.BigDecimal("0.50"),
                    ""));
            w.put(new Movement("v-00094", DAY, "lot-0001", MovementKind.USE, -2, null, null, null, null, null, ""));
            w.setting(Setting.SMALLEST_ORDER.written(), "{\"sup-v-new\": 40}");
        });
        RestockAnswer answer = restock.ask(RestockQuestion.BOOKS_ALONE);
        assertThat(restock.orders(answer))
                .singleElement()
                .satisfies(list ->
                        assertThat(list.heed()).isEqualTo("comes to 6.00, under the smallest order of 40: add 34.00"));
    }

    /** The list kept up change by change is the list reckoned from nothing. */
    @Test
    void keptUpIsTheSameAsReckonedAnew() {
        SplittableRandom random = new SplittableRandom(5);
        books.write("more", w -> {
            for (int i = 2; i < 9; i++) {
                w.put(lot("lot-000" + i, Count.ZERO));
            }
        });
        for (int i = 0; i < 120; i++) {
            change(random, i);
            if (i % 5 == 0) {
                assertThat(restock.ask(RestockQuestion.BOOKS_ALONE))
                        .isEqualTo(new Restock(books).ask(RestockQuestion.BOOKS_ALONE));
            }
        }
    }

    private void change(SplittableRandom random, int i) {
        String lot = "lot-000" + random.nextInt(1, 9);
        LocalDate day = DAY.minusDays(random.nextInt(700));
        String id = "v-1%04d".formatted(2 * i);
        switch (random.nextInt(5)) {
            case 0 -> move(id, lot, MovementKind.RECEIPT, random.nextInt(1, 13), day);
            case 1 -> books.undo(move(id, lot, MovementKind.USE, -1, day).number());
            case 2 ->
                books.write(
                        "note", w -> w.put(w.find(Lot.class, lot).orElseThrow().withReserve(random.nextBoolean())));
            default -> move(id, lot, MovementKind.USE, -random.nextInt(1, 4), day);
        }
    }
}
