package hornbook.viewer.hand;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.PartUsed;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hands at the drawers of story 3 (scenario): discs lie under “buttons, misc.”, rollers under “CORV. DISCS”. */
class HandModelTest {
    private static final String BUTTONS = "d-card-r5c5";
    private static final String DISCS = "d-card-r5c4";

    @TempDir
    static Path folder;

    private static Workshop shop;
    private static long before;

    private HandModel hand;
    private Pull pull;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder);
        before = shop.books().lastStanding().orElseThrow().number();
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    /** Everything done is undone again, newest first: so each test has the shop as it was. */
    @AfterEach
    void takeBack() {
        while (shop.books().lastStanding().orElseThrow().number() > before) {
            shop.books().undoLast();
        }
    }

    @BeforeEach
    void pull() {
        hand = new HandModel(Work.atOnce(), DemoHands.of(shop));
        pull = new Pull(shop.stock(), shop.openJobs());
        hand.onDeed(done -> show(hand.view().card().id()));
        show(BUTTONS);
        hand.choose("lot-0262");
    }

    private void show(String drawer) {
        hand.show(pull.drawer(drawer).orElseThrow());
    }

    private Lot lot(String id) {
        return shop.books().find(Lot.class, id).orElseThrow();
    }

    private void answer(String... pairs) {
        Map<String, String> answers = new java.util.HashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            answers.put(pairs[i], pairs[i + 1]);
        }
        hand.answer(new Answers(answers));
    }

    @Test
    void fAsksWhatFitsLikeTheLotInHand() {
        java.util.List<String> asked = new java.util.ArrayList<>();
        hand.onFit(asked::add);
        assertThat(hand.press('f')).isTrue();
        assertThat(asked).containsExactly("lot-0262");
        assertThat(hand.view().ask()).isNull();
    }

    @Test
    void aDiscIsTakenForTheJobAndStockGoesDown() {
        hand.begin(Act.TAKE);
        answer("pieces", "1", "job", "j-0238");
        assertThat(lot("lot-0262").count().written()).isEqualTo("2");
        assertThat(shop.books().where(PartUsed.class, "job", "j-0238"))
                .extracting(PartUsed::lot)
                .contains("lot-0262");
        assertThat(hand.view().lot().orElseThrow().count()).isEqualTo("2");
    }

    @Test
    void whatALotIsIsPutRightAndANameThatIsNoKindIsRefused() {
        hand.begin(Act.DESCRIBE);
        assertThat(hand.view().ask().fields().get(1).text()).isEqualTo("part-reso-snap");
        answer("title", "snap-on disc", "kind", "banana", "size", "", "thread", "", "supplier", "", "pack", "");
        assertThat(hand.view().ask().trouble()).contains("no kind");
        String size = lot("lot-0262").dimensions();
        answer("title", "snap disc", "kind", "part-reso-snap", "size", size, "supplier", "marlbeck", "pack", "4");
        assertThat(lot("lot-0262"))
                .extracting(Lot::title, Lot::dimensions, Lot::supplier, Lot::pack)
                .containsExactly("snap disc", size, "sup-v-marlbeck", 4);
    }

    @Test
    void whatWasBoughtNamesWhoSentItAndNobodyIsRefused() {
        hand.begin(Act.PUT_IN);
        answer("pieces", "2", "how", "bought", "from", "NOBODY");
        assertThat(hand.view().ask().trouble()).contains("no supplier");
        answer("pieces", "2", "how", "bought", "from", "Marlbeck");
        assertThat(lot("lot-0262").count().written()).isEqualTo("5");
        assertThat(lot("lot-0262").supplier()).isEqualTo("sup-v-marlbeck");
    }

    @Test
    void theJobWhoseClockRunsIsOfferedThenTheOneLastTakenFor() {
        hand.begin(Act.TAKE);
        assertThat(hand.view().ask().fields().get(1).text()).isEmpty();
        answer("pieces", "1", "job", "j-0238");
        hand.begin(Act.TAKE);
        assertThat(hand.view().ask().fields().get(1).text()).isEqualTo("j-0238");
        hand.leave();
        shop.clocks().start("j-0237", "task-inspect", 1, "N.O.");
        show(BUTTONS);
        hand.begin(Act.TAKE);
        assertThat(hand.view().ask().fields().get(1).text()).isEqualTo("j-0237");
    }

    @Test
    void aDigitBeginsTheCountAndTheNextLotComesToHand() {
        hand.choose(hand.view().card().lots().getFirst().id());
        hand.count("3");
        assertThat(hand.view().ask().fields().getFirst().text()).isEqualTo("3");
        answer("count", "37");
        assertThat(hand.view().card().lots().getFirst().count()).isEqualTo("37");
        assertThat(hand.view().chosen()).isEqualTo(1);
    }

    @Test
    void roughWordsHaveALetterEach() {
        hand.begin(Act.COUNT);
        answer("count", "p");
        assertThat(lot("lot-0262").count().written()).isEqualTo("plenty");
    }

    @Test
    void whatCannotBeCountedIsSaidAtTheQuestionWhichStays() {
        hand.begin(Act.COUNT);
        answer("count", "three");
        assertThat(hand.view().ask().trouble()).contains("three").contains("whole number");
        assertThat(lot("lot-0262").count().written()).isEqualTo("3");
    }

    @Test
    void moreThanThereIsIsRefused() {
        hand.begin(Act.TAKE);
        answer("pieces", "9", "job", "");
        assertThat(hand.view().ask().trouble()).contains("count it first");
    }

    @Test
    void movedByReadingTheLabelOfTheDrawerItGoesTo() {
        hand.begin(Act.MOVE);
        assertThat(hand.scanned("d-card-r5c6")).isTrue();
        assertThat(lot("lot-0262").lies()).isEqualTo("d-card-r5c6");
        assertThat(hand.scanned("d-card-r5c6")).isFalse();
    }

    @Test
    void splitJoinedSetAsideKeptAndOutOfUse() {
        hand.begin(Act.SPLIT);
        answer("pieces", "1", "to", BUTTONS);
        String made = hand.view().card().lots().getLast().id();
        assertThat(lot(made).count().written()).isEqualTo("1");
        hand.choose(made);
        hand.begin(Act.JOIN);
        answer("into", "lot-0262");
        assertThat(lot("lot-0262").count().written()).isEqualTo("3");
        hand.choose("lot-0262");
        hand.begin(Act.SET_ASIDE);
        assertThat(lot("lot-0262").reserve()).isTrue();
        hand.begin(Act.SET_ASIDE);
        hand.begin(Act.KEEPSAKE);
        assertThat(lot("lot-0262").reserve()).isFalse();
        assertThat(lot("lot-0262").keepsake()).isTrue();
        hand.begin(Act.RETIRE);
        assertThat(hand.view().card().lots()).noneMatch(lot -> lot.id().equals("lot-0262"));
        hand.bringBack(hand.view().card().outOfUse().stream()
                .filter(lot -> lot.id().equals("lot-0262"))
                .findFirst()
                .orElseThrow());
        assertThat(lot("lot-0262").count().written()).isEqualTo("3");
    }

    @Test
    void takingFromTheReserveMustBeSaid() {
        hand.begin(Act.SET_ASIDE);
        hand.begin(Act.TAKE);
        assertThat(hand.view().ask().fields()).extracting(field -> field.name()).contains("reserve");
        answer("pieces", "1", "job", "", "reserve", "yes");
        assertThat(lot("lot-0262").count().written()).isEqualTo("2");
    }

    @Test
    void aLabelThatLiesIsOfferedToBePutRight() {
        show(DISCS);
        assertThat(hand.view().card().label()).isEqualTo("CORV. DISCS");
        assertThat(hand.view().proposal()).contains("roller");
        hand.begin(Act.LABEL);
        answer("label", hand.view().ask().fields().getFirst().text());
        Drawer drawer = shop.books().find(Drawer.class, DISCS).orElseThrow();
        assertThat(drawer.labelState()).isEqualTo(LabelState.RIGHT);
        assertThat(drawer.labelAsWritten()).contains("roller");
        assertThat(drawer.writtenBy()).isEqualTo("N.O.");
        assertThat(hand.view().proposal()).isEmpty();
    }

    @Test
    void lookedThroughIsDatedAndSaysWhetherTheLabelIsRight() {
        show(DISCS);
        hand.look();
        answer("contents", "rollers, 3 sizes", "label", "CORV. DISCS", "says", "no");
        Drawer drawer = shop.books().find(Drawer.class, DISCS).orElseThrow();
        assertThat(drawer.labelState()).isEqualTo(LabelState.DRIFTED);
        assertThat(drawer.contentsAsFound()).isEqualTo("rollers, 3 sizes");
        assertThat(drawer.lastLookedThrough()).isEqualTo(shop.books().today());
    }

    @Test
    void aPartsHornIsStrippedInOneStep() {
        show("pl-parts-horn-c");
        int pieces = hand.view().card().lots().size();
        assertThat(pieces).isPositive();
        hand.begin(Act.STRIP);
        answer("to", DISCS);
        assertThat(hand.view().card().lots()).isEmpty();
        shop.books().undoLast();
        show("pl-parts-horn-c");
        assertThat(hand.view().card().lots()).hasSize(pieces);
    }

    @Test
    void somethingNewIsPutInCounted() {
        hand.begin(Act.NEW);
        answer("title", "neck screw, knurled", "count", "4", "size", "12 mm");
        assertThat(hand.view().card().lots().getLast())
                .satisfies(lot -> assertThat(lot.title()).isEqualTo("neck screw, knurled"))
                .satisfies(lot -> assertThat(lot.count()).isEqualTo("4"))
                .satisfies(lot -> assertThat(lot.dimensions()).isEqualTo("size=12 mm"));
    }
}
