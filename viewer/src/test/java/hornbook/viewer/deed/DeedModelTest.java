package hornbook.viewer.deed;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.store.Deed;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The strip that says what was done; lot-0262 holds three discs (scenario, story 3). */
class DeedModelTest {
    @TempDir
    Path folder;

    private Workshop shop;
    private DeedModel model;

    @BeforeEach
    void open() {
        shop = DemoShop.in(folder);
        model = new DeedModel(Work.atOnce(), shop.books());
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private String count() {
        return shop.books().find(Lot.class, "lot-0262").orElseThrow().count().written();
    }

    private Deed count(int pieces) {
        return shop.stockBook().count("lot-0262", new Count.Exact(pieces));
    }

    @Test
    void whatIsDoneAnywhereIsSaidAndTakenBack() {
        count(5);
        assertThat(model.view().words()).isEqualTo("Done: count 5 of snap-on disc, Corvane, 19 mm");
        model.takeBack();
        assertThat(count()).isEqualTo("3");
        assertThat(model.view().words()).contains("undo").contains("count 5 of");
    }

    @Test
    void onceMoreTakesBackTheOneBefore() {
        count(5);
        count(9);
        model.takeBack();
        model.takeBack();
        assertThat(count()).isEqualTo("3");
    }

    @Test
    void whatWasDoneBeforeTodaysSittingIsNamedFirst() {
        model.takeBack();
        assertThat(model.view().words()).contains("import of").contains("once more");
        assertThat(shop.books().all(Lot.class)).hasSize(961);
    }

    @Test
    void aDeedThatALaterOneStandsOnIsRefusedByName() {
        Deed first = shop.stockBook().setAside("lot-0262", true);
        shop.stockBook().keepsake("lot-0262", true);
        model.undo(first);
        assertThat(model.view().trouble()).isTrue();
        assertThat(model.view().words()).contains("as a pattern").contains("undo that first");
    }

    @Test
    void anUndoingIsUndoneToHaveItAgain() {
        count(5);
        model.takeBack();
        model.undo(model.view().last());
        assertThat(count()).isEqualTo("5");
    }
}
