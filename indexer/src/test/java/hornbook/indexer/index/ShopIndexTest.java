package hornbook.indexer.index;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.indexer.search.Hit;
import hornbook.indexer.search.Question;
import hornbook.indexer.search.Search;
import hornbook.shared.shop.LabelState;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The index opens whatever its folder is like, and follows the books. */
class ShopIndexTest {
    @TempDir
    Path folder;

    private static List<String> ids(ShopIndex index, String text) {
        return new Search(index)
                .find(Question.of(text)).hits().stream().map(Hit::id).toList();
    }

    @Test
    void aSavedChangeIsVisibleAtOnce() {
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            assertThat(ids(index, "lot-0002")).doesNotContain("lot-0002");
            Shops.furnish(books);
            assertThat(ids(index, "snap-on disc 19")).first().isEqualTo("lot-0002");
            books.write("use them up", w -> w.put(Shops.count("v-3", "lot-0002", -3)));
            Hit hit = new Search(index)
                    .find(Question.of("snap-on disc 19")).hits().stream()
                            .filter(h -> h.id().equals("lot-0002"))
                            .findFirst()
                            .orElseThrow();
            assertThat(hit.onHand()).isEqualTo("0");
        }
    }

    @Test
    void aLotThatMovesTakesBothDrawersWithIt() {
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            Shops.furnish(books);
            books.write(
                    "move",
                    w -> w.put(Shops.lot("lot-0002", "d-1", "part-reso-snap", "snap-on disc, 19 mm", "size=19 mm")));
            Hit hit = new Search(index)
                    .find(Question.of("snap-on disc 19"))
                    .hits()
                    .getFirst();
            assertThat(hit.drawer()).isEqualTo("d-1");
            assertThat(hit.drawerLabel()).isEqualTo("CORV. DISCS");
            books.undo(books.deeds(1).getFirst().number());
            assertThat(new Search(index)
                            .find(Question.of("snap-on disc 19"))
                            .hits()
                            .getFirst()
                            .drawer())
                    .isEqualTo("d-2");
        }
    }

    @Test
    void aNewLabelIsOnEveryLotInTheDrawer() {
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            Shops.furnish(books);
            books.write("relabel", w -> w.put(Shops.drawer("d-2", 2, "SNAP DISCS", "snap-on disc", LabelState.RIGHT)));
            assertThat(new Search(index)
                            .find(Question.of("snap-on disc 19"))
                            .hits()
                            .getFirst()
                            .drawerLabel())
                    .isEqualTo("SNAP DISCS");
        }
    }

    @Test
    void anUpToDateIndexOpensWithoutReadingTheCatalogue() {
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            Shops.furnish(books);
        }
        try (Books books = Shops.open(folder);
                ShopIndex index = ShopIndex.open(
                        books,
                        () -> {
                            throw new AssertionError("read");
                        },
                        () -> Shops.SIZES)) {
            assertThat(ids(index, "snap-on disc 19")).first().isEqualTo("lot-0002");
        }
    }

    @Test
    void whatHappenedWithoutTheIndexIsTakenInAtOpening() {
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            assertThat(ids(index, "disc")).isNotEmpty();
        }
        try (Books books = Shops.open(folder)) {
            Shops.furnish(books);
        }
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            assertThat(ids(index, "snap-on disc 19")).first().isEqualTo("lot-0002");
        }
    }

    @Test
    void aReaderAnswersWhatItHasAndSaysHowOldItIs() {
        try (Books books = Shops.open(folder)) {
            try (ShopIndex index = Shops.index(books)) {
                Shops.furnish(books);
            }
            books.write("use", w -> w.put(Shops.count("v-3", "lot-0002", -1)));
            try (Books reader = Books.open(folder, Access.READ);
                    ShopIndex index = Shops.index(reader)) {
                var answer = new Search(index).find(Question.of("snap-on disc 19"));
                assertThat(answer.hits().getFirst().onHand()).isEqualTo("3");
                assertThat(answer.asOf()).isNotNull();
            }
        }
    }

    @Test
    void aReaderWithoutAnIndexMakesOneThatGoesWithIt() {
        try (Books books = Shops.open(folder)) {
            Shops.furnish(books);
        }
        try (Books reader = Books.open(folder, Access.READ);
                ShopIndex index = Shops.index(reader)) {
            assertThat(ids(index, "snap-on disc 19")).first().isEqualTo("lot-0002");
        }
        assertThat(folder.resolve("index")).doesNotExist();
    }

    @Test
    void anIndexOfAnotherVersionIsMadeAnew() throws Exception {
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            Shops.furnish(books);
        }
        try (IndexStore store = new IndexStore(new IndexFolder(folder.resolve("index")).directory(), null)) {
            store.commit(new Stamp(Stamp.VERSION + 1, 99, "", "", java.time.Instant.EPOCH));
        }
        assertThat(new IndexFolder(folder.resolve("index")).trusted()).isEmpty();
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            assertThat(ids(index, "snap-on disc 19")).first().isEqualTo("lot-0002");
        }
    }

    @Test
    void booksPutBackFromACopyGetANewIndex() throws Exception {
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            Shops.furnish(books);
        }
        Files.delete(folder.resolve("shop.db"));
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            assertThat(ids(index, "snap-on disc 19")).doesNotContain("lot-0002");
        }
    }
}
