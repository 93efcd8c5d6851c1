package hornbook.shared.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.SmallShop;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drawers and furniture: each deed is dated by the shop's day and can be taken back. */
class DrawerBookTest {
    private static final String DRIFTED = "d-spool-r6c4";

    @TempDir
    Path folder;

    private Books books;
    private DrawerBook drawers;
    private CabinetBook cabinets;

    @BeforeEach
    void open() {
        books = SmallShop.open(folder);
        drawers = new DrawerBook(books);
        cabinets = new CabinetBook(books);
    }

    @AfterEach
    void close() {
        books.close();
    }

    private Drawer drawer(String id) {
        return books.find(Drawer.class, id).orElseThrow();
    }

    @Test
    void aDriftedLabelPutRightIsOneDeedAndDated() {
        Drawer before = drawer(DRIFTED);
        assertThat(before.labelState()).isEqualTo(LabelState.DRIFTED);
        Deed deed = drawers.putRight(DRIFTED, "THIN CORK", "cork, thin", "N.O.");
        assertThat(drawer(DRIFTED).labelState()).isEqualTo(LabelState.RIGHT);
        assertThat(drawer(DRIFTED).contentsAsFound()).isEqualTo("cork, thin");
        assertThat(drawer(DRIFTED).lastLookedThrough()).isEqualTo(books.today());
        assertThat(new Stock(books).drawer(DRIFTED).orElseThrow().heed()).isNull();
        books.undo(deed.number());
        assertThat(drawer(DRIFTED)).isEqualTo(before);
    }

    @Test
    void aCabinetIsSetUpWithADrawerAtEverySpot() {
        cabinets.add("Oak chest", 3, 4, "by the door");
        CabinetPlan plan = new Furniture(books)
                .plans().stream()
                        .filter(p -> p.name().equals("Oak chest"))
                        .findFirst()
                        .orElseThrow();
        assertThat(plan.drawers()).hasSize(12).allMatch(DrawerFront::empty).allMatch(DrawerFront::unsure);
        assertThat(new Stock(books).drawer("oak chest r3c4"))
                .get()
                .extracting(DrawerCard::id)
                .isEqualTo("d-oak-chest-r3c4");
        books.undoLast();
        assertThat(new Furniture(books).plans()).noneMatch(p -> p.name().equals("Oak chest"));
    }

    @Test
    void aCabinetThatCannotBeDrawnIsRefused() {
        assertThatThrownBy(() -> cabinets.add("", 2, 2, "")).hasMessageContaining("no name");
        assertThatThrownBy(() -> cabinets.add("Tall", 100, 2, "")).hasMessageContaining("1 to 99");
        cabinets.add("Oak", 1, 1, "");
        assertThatThrownBy(() -> cabinets.add("oak", 1, 1, "")).hasMessageContaining("already");
    }

    @Test
    void aCabinetTakenBackLeavesItsNumberUnused() {
        cabinets.add("Oak", 1, 1, "");
        books.undoLast();
        cabinets.add("Oak", 2, 1, "");
        assertThat(new Stock(books).drawer("Oak r2c1")).isPresent();
    }
}
