package hornbook.viewer.hand;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.shop.Lot;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field.Choice;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tin of odd screws, never sorted (lot-0499 of the demonstration shop): a screw is gauged and finds its like. */
class SortingOutTest {
    private static final String TIN = "d-apoth-r8c4";

    @TempDir
    Path folder;

    private Workshop shop;
    private HandModel hand;

    @BeforeEach
    void open() {
        shop = DemoShop.in(folder);
        hand = new HandModel(Work.atOnce(), DemoHands.of(shop));
        Pull pull = new Pull(shop.stock(), shop.openJobs());
        hand.onDeed(done -> hand.show(pull.drawer(TIN).orElseThrow()));
        hand.show(pull.drawer(TIN).orElseThrow());
        hand.choose("lot-0499");
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private void said(String title, String thread, String size) {
        hand.press('w');
        hand.answer(
                new Answers(Map.of("title", title, "count", "2", "thread", thread, "size", size, "state", "salvaged")));
    }

    private List<Choice> places() {
        return hand.view().ask().fields().getFirst().choices();
    }

    /** lot-0001 and lot-0002 are steel pivots of this thread with a headed nose, 10.4 and 10.7 mm long (demo data). */
    @Test
    void theLikestLotIsOfferedFirstAndTheTinKeepsItsWord() {
        said("pivot screw, headed", "3-48", "length 10.4; head 3.4; nose=headed-tapered");
        assertThat(places().getFirst().value()).isEqualTo("into lot-0001");
        hand.answer(new Answers(Map.of("to", places().getFirst().value(), "elsewhere", "")));
        assertThat(hand.view().ask()).isNull();
        assertThat(count("lot-0001")).isEqualTo("18");
        assertThat(count("lot-0499")).isEqualTo("plenty");
        shop.books().undoLast();
        assertThat(count("lot-0001")).isEqualTo("16");
    }

    @Test
    void whatIsLikeNothingStaysHereOrGoesWhereItIsSaid() {
        said("a thing from a music box", "", "3 mm");
        assertThat(places()).extracting(Choice::value).containsExactly(TIN);
        hand.answer(new Answers(Map.of("to", TIN, "elsewhere", "hook 1")));
        assertThat(shop.stock().drawer("hook 1").orElseThrow().lots())
                .extracting(lot -> lot.title() + " " + lot.dimensions())
                .contains("a thing from a music box size=3 mm");
    }

    @Test
    void whatCannotBeReadIsAskedAgainWithTheReason() {
        said("pivot screw", "3-47", "");
        Ask ask = hand.view().ask();
        assertThat(ask.trouble()).contains("3-48");
        assertThat(ask.fields()).extracting(field -> field.name()).contains("title");
        hand.leave();
        assertThat(count("lot-0499")).isEqualTo("plenty");
    }

    private String count(String lot) {
        return shop.books().find(Lot.class, lot).orElseThrow().count().written();
    }
}
