package hornbook.viewer.find;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.indexer.search.Hit;
import hornbook.viewer.card.Cards;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The answers are those of the demonstration shop's own stories: the lost discs, and the spanner that turns two things. */
class FindModelTest {
    @TempDir
    static Path folder;

    private static Workshop shop;

    private final Set<String> lit = new HashSet<>();
    private FindModel model;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder.resolve("shop"));
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @BeforeEach
    void start() {
        Cards cards = new Cards(shop.stock(), shop.furniture(), shop.jobs(), shop::catalogue);
        model = new FindModel(Work.atOnce(), question -> shop.search().find(question), cards, drawers -> {
            lit.clear();
            lit.addAll(drawers);
        });
    }

    @Test
    void theLostDiscIsFoundInTheDrawerThatDoesNotSaySo() {
        model.typed("corvane disc 19");
        Hit lot = hit("lot-0262");
        assertThat(lot.drawerLabel()).isEqualTo("buttons, misc.");
        assertThat(lot.onHand()).isEqualTo("3");
        assertThat(lit).contains("d-card-r5c5");
    }

    @Test
    void hitsStandGroupByGroupAndByScoreWithin() {
        model.typed("corvane disc");
        List<Group> groups = model.view().hits().stream().map(Group::of).toList();
        assertThat(new LinkedHashSet<>(groups)).hasSizeGreaterThan(1);
        for (Group group : Group.values()) {
            assertThat(model.view().hits().stream()
                            .filter(h -> Group.of(h) == group)
                            .map(Hit::score))
                    .isSortedAccordingTo(Comparator.reverseOrder());
            assertThat(runs(groups, group)).isLessThanOrEqualTo(1);
        }
    }

    private static long runs(List<Group> groups, Group group) {
        long runs = 0;
        for (int i = 0; i < groups.size(); i++) {
            if (groups.get(i) == group && (i == 0 || groups.get(i - 1) != group)) {
                runs++;
            }
        }
        return runs;
    }

    @Test
    void enterOpensTheBestHitAndArrowsChooseAnother() {
        model.typed("two-pin spanner");
        Hit best = model.view().hits().getFirst();
        model.open();
        assertThat(model.view().card().id()).isEqualTo(best.id());
        model.step(1);
        model.open();
        assertThat(model.view().card().id())
                .isEqualTo(model.view().hits().get(1).id());
    }

    /** A key that acts means what is lit: never a card left open from what was looked for before. */
    @Test
    void anOpenCardGoesWhenOtherHitsComeOrAreChosen() {
        model.typed("corvane disc 19");
        model.open();
        model.typed("halverick resonator nut");
        assertThat(model.view().card()).isNull();
        assertThat(model.lying().orElseThrow().lot())
                .isEqualTo(model.view().hits().getFirst().id());
        model.open();
        model.step(1);
        assertThat(model.view().card()).isNull();
        model.open();
        model.refresh();
        assertThat(model.view().card()).isNotNull();
    }

    @Test
    void stepsStayWithinTheList() {
        model.typed("spanner");
        model.step(-5);
        assertThat(model.view().chosen()).isZero();
        model.step(1000);
        assertThat(model.view().chosen()).isEqualTo(model.view().hits().size() - 1);
    }

    @Test
    void backGoesTheWayOneCameThroughTheCards() {
        model.typed("two-pin spanner");
        model.open();
        String first = model.view().card().id();
        model.follow("place", "d-card-r3c6");
        assertThat(model.view().card().title()).isEqualTo("bumper holders");
        assertThat(model.back()).isTrue();
        assertThat(model.view().card().id()).isEqualTo(first);
        assertThat(model.back()).isTrue();
        assertThat(model.view().card()).isNull();
        assertThat(model.back()).isFalse();
    }

    @Test
    void anEmptyBoxPutsTheLightsOut() {
        model.typed("corvane disc 19");
        model.typed(" ");
        assertThat(model.view().hits()).isEmpty();
        assertThat(lit).isEmpty();
    }

    @Test
    void whatHasNoCardIsSaid() {
        model.follow("lot", "lot-9999");
        assertThat(model.view().trouble()).contains("lot-9999");
    }

    private Hit hit(String id) {
        return model.view().hits().stream()
                .filter(h -> h.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
