package hornbook.shared.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.SmallShop;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Places, tools and the walk through the drawers: what is set up is there, and each deed can be taken back. */
class ShopFittingsTest {
    @TempDir
    Path folder;

    private Books books;
    private ToolBook tools;

    @BeforeEach
    void open() {
        books = SmallShop.open(folder);
        tools = new ToolBook(books);
    }

    @AfterEach
    void close() {
        books.close();
    }

    private ToolCard tool(String id) {
        return new Tools(books).tool(id).orElseThrow();
    }

    private String newest() {
        return new Tools(books).all().getLast().id();
    }

    @Test
    void aPartsHornIsAPlaceThatPartsCanLieOnAndBeStrippedOff() {
        Deed deed = new PlaceBook(books).add("parts horn E", "parts horn", "under the stair", null, "");
        StockBook stock = new StockBook(books);
        stock.move("lot-0933", "parts horn E");
        assertThat(new Stock(books).drawer("parts horn E").orElseThrow().lots())
                .extracting(LotLine::id)
                .containsExactly("lot-0933");
        stock.strip("parts horn E", "shelf 2");
        assertThat(new Stock(books).lot("lot-0933").orElseThrow().drawerLabel()).isEqualTo("shelf 2");
        books.undoLast();
        books.undoLast();
        books.undo(deed.number());
        assertThat(new Stock(books).drawer("parts horn E")).isEmpty();
    }

    @Test
    void aPlaceWithoutAKindOrWithANameTakenIsRefused() {
        PlaceBook places = new PlaceBook(books);
        assertThatThrownBy(() -> places.add("hook 9", " ", "", null, "")).hasMessageContaining("kind");
        assertThatThrownBy(() -> places.add("Hook 1", "hook", "", null, "")).hasMessageContaining("already");
    }

    @Test
    void aToolIsWrittenDownPutElsewhereAndChecked() {
        tools.add("dial gauge, small", "end shake", "hook 1");
        String id = newest();
        assertThat(tool(id).label()).isEqualTo("hook 1");
        tools.put(id, "shelf 2");
        Deed checked = tools.checked(id, "-0,01", "against the 5 mm block");
        assertThat(tool(id).label()).isEqualTo("shelf 2");
        assertThat(tool(id).errorMm()).isEqualTo("-0.01");
        assertThat(tool(id).errorChecked()).isEqualTo(books.today());
        books.undo(checked.number());
        assertThat(tool(id).errorMm()).isEmpty();
        assertThatThrownBy(() -> tools.checked(id, "a hair", "")).hasMessageContaining("as +0.02");
        assertThatThrownBy(() -> tools.put("tool-none", "shelf 2")).hasMessageContaining("tool-none");
    }

    @Test
    void aSetGetsAMemberOnceAndItMayBeLent() {
        tools.add("dies, small", "", "hook 1");
        String id = newest();
        tools.addMember(id, "die", "M3x0.5");
        assertThatThrownBy(() -> tools.addMember(id, "die", "M3x0.5")).hasMessageContaining("already");
        tools.lend(id, "M3x0.5", "B-04");
        assertThat(tool(id).wanting()).extracting(MemberLine::lentTo).containsExactly("B-04");
        assertThat(tool(id).wanting()).extracting(MemberLine::since).containsExactly(books.today());
        books.undoLast();
        assertThat(tool(id).wanting()).isEmpty();
    }

    /** Drifted labels first, then missing ones, then what was not seen for two years, the longest unseen first. */
    @Test
    void drawersThatWantLookingThroughAreNamedWorstFirst() {
        LookThrough walk = new LookThrough(books);
        List<DrawerCard> due = walk.due("");
        assertThat(due).isNotEmpty().allMatch(card -> card.heed() != null);
        List<String> states =
                due.stream().map(DrawerCard::labelState).distinct().toList();
        assertThat(List.of("drifted", "none", "right")).containsSubsequence(states);
        String worst = due.getFirst().id();
        new DrawerBook(books).putRight(worst, "WHAT IT IS", "what it is", "N.O.");
        assertThat(walk.due("")).extracting(DrawerCard::id).doesNotContain(worst);
        long unseen = books.all(Drawer.class).stream()
                .filter(d -> d.labelState() == LabelState.RIGHT)
                .filter(d -> Stock.unsure(d, books.today()))
                .count();
        assertThat(due.stream().filter(card -> "right".equals(card.labelState())))
                .hasSize((int) unseen);
    }

    @Test
    void theWalkGoesRowByRowAndEndsWithTheCabinet() {
        new CabinetBook(books).add("Oak chest", 2, 2, "");
        LookThrough walk = new LookThrough(books);
        assertThat(walk.after("d-oak-chest-r1c1")).contains("d-oak-chest-r1c2");
        assertThat(walk.after("d-oak-chest-r1c2")).contains("d-oak-chest-r2c1");
        assertThat(walk.after("d-oak-chest-r2c2")).isEmpty();
        assertThat(walk.due("oak chest")).hasSize(4);
    }
}
