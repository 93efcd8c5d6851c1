package hornbook.viewer.drawers;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.stock.CabinetPlan;
import hornbook.shared.stock.DrawerFront;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.hand.Pull;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demonstration shop has ten cabinets with 286 drawers, of which 26 are empty (its own description). */
class DrawersModelTest {
    @TempDir
    static Path folder;

    private static Workshop shop;

    private DrawersModel model;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @BeforeEach
    void show() {
        model = OnDemo.of(shop).drawers();
        model.refresh();
    }

    @Test
    void theFirstCabinetIsInView() {
        assertThat(model.view().cabinets()).hasSize(10);
        assertThat(model.view().cabinet().orElseThrow().name()).isEqualTo("Card catalog");
    }

    @Test
    void everyDrawerIsDrawnAndTheEmptyOnesStandOut() {
        assertThat(model.view().cabinets().stream().flatMap(p -> p.drawers().stream()))
                .hasSize(286)
                .filteredOn(DrawerFront::empty)
                .hasSize(26);
    }

    @Test
    void openingADrawerBringsItsCabinetIntoView() {
        model.open("d-apoth-r4c8");
        assertThat(model.view().chosen()).isEqualTo("c-apoth");
        assertThat(model.view().open()).isEqualTo("d-apoth-r4c8");
    }

    @Test
    void aDrawerThatIsNotThereIsSaid() {
        model.open("d-none");
        assertThat(model.view().open()).isNull();
        assertThat(model.view().trouble()).contains("d-none");
    }

    /** As when a lot is pulled from another screen: that comes into view, which has it ask again. */
    @Test
    void askingAgainLeavesTheDrawerThatIsBeingPulled() throws InterruptedException {
        BlockingQueue<Runnable> shown = new LinkedBlockingQueue<>();
        try (Work work = Work.beside(shown::add)) {
            OnDemo demo = OnDemo.of(shop);
            DrawersModel slow =
                    new DrawersModel(work, shop.furniture(), new Pull(shop.stock(), shop.openJobs()), demo.hand());
            slow.open("d-card-r1c1");
            Objects.requireNonNull(shown.poll(1, TimeUnit.MINUTES)).run();
            slow.open("d-card-r3c2", "lot-0178", "");
            slow.refresh();
            Objects.requireNonNull(shown.poll(1, TimeUnit.MINUTES)).run();
            Objects.requireNonNull(shown.poll(1, TimeUnit.MINUTES)).run();
            assertThat(slow.view().open()).isEqualTo("d-card-r3c2");
        }
    }

    @Test
    void pushingInClosesOnce() {
        model.open("d-apoth-r4c8");
        assertThat(model.close()).isTrue();
        assertThat(model.close()).isFalse();
        assertThat(model.view().open()).isNull();
    }

    @Test
    void litDrawersAreCountedAndTheirCabinetIsShown() {
        model.light(Set.of("d-apoth-r4c8", "d-apoth-r8c1"));
        CabinetPlan chest = model.view().cabinet().orElseThrow();
        assertThat(chest.id()).isEqualTo("c-apoth");
        assertThat(model.view().litIn(chest)).isEqualTo(2);
    }

    @Test
    void lightDoesNotTakeAnOpenDrawerOutOfView() {
        model.open("d-card-r5c5");
        model.light(Set.of("d-apoth-r4c8"));
        assertThat(model.view().chosen()).isEqualTo("c-card");
    }

    @Test
    void aPlaceThatIsNoDrawerIsOpenedAmongTheOthers() {
        model.open("parts horn C");
        assertThat(model.view().open()).isEqualTo("pl-parts-horn-c");
        assertThat(model.view().chosen()).isEqualTo(DrawersView.PLACES);
    }

    @Test
    void theWalkGoesRowByRowToTheEnd() {
        model.choose("c-spool");
        model.lookThrough();
        assertThat(model.view().open()).isEqualTo("d-spool-r1c1");
        int seen = 0;
        while (model.view().open() != null) {
            seen++;
            model.next();
        }
        assertThat(seen).isEqualTo(24);
        assertThat(model.view().trouble()).contains("last drawer");
    }
}
