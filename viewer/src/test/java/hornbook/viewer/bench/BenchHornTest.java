package hornbook.viewer.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.identify.Seen;
import org.junit.jupiter.api.Test;

/** A horn that the books hold, laid on the bench. */
class BenchHornTest extends OnTheBench {
    @Test
    void whatTheBooksHoldCanBeTakenBackHereAndStaysInTheBooks() {
        model.lay("horn", "h-192");
        double with = probability("m-halverick-drumlin-alto");
        model.takeBack("tone-hole-make");
        assertThat(model.view().horn().looks("tone-hole-make")).containsExactly(new Seen.CannotTell("tone-hole-make"));
        assertThat(probability("m-halverick-drumlin-alto")).isLessThan(with);
        model.lay("horn", "h-192");
        assertThat(probability("m-halverick-drumlin-alto")).isCloseTo(with, within(1e-12));
    }

    @Test
    void aNumberOrNameThatTheBooksHoldCanBeTakenBackToo() {
        model.lay("horn", "h-192");
        assertThat(model.view().horn()).returns("3660?8", InHand::serial).returns("Merrivane", InHand::mark);
        model.serial("");
        model.mark("");
        assertThat(model.view().horn().question().serial()).isEqualTo("?");
        model.lay("horn", "h-194");
        assertThat(model.view().horn().question().mark()).isNull(); // the books have no name on it
        assertThat(model.view().weighed().answer().remarks()).isEmpty();
    }

    @Test
    void theHornsInTheShopAreOffered() {
        model.lookRound();
        BenchView.Side.Here here = (BenchView.Side.Here) model.view().side();
        assertThat(here.horns())
                .extracting(h -> h.id())
                .contains("j-0235", "j-0237")
                .doesNotContain("j-0164");
        assertThat(model.back()).isTrue();
    }

    /** The Twelve's own pad set, and the cups of h-197 as they were measured: demo, horn h-197, its story 5. */
    @Test
    void itsCupsAreShownAsReadAndElseAsTheLikeliestModelHasThem() {
        model.lay("horn", "h-197");
        model.cups();
        BenchView.Side.Cups own = (BenchView.Side.Cups) model.view().side();
        assertThat(own.map().horn()).isEqualTo("h-197");
        assertThat(own.map().cups())
                .anyMatch(cup -> cup.inside() != null && cup.inside().own());
        model.cups();
        assertThat(model.view().side()).isInstanceOf(BenchView.Side.Look.class);
        model.lay("model", "m-sorakane-twelve-alto");
        model.cups("m-sorakane-twelve-alto");
        BenchView.Side.Cups usual = (BenchView.Side.Cups) model.view().side();
        assertThat(usual.map().horn()).isEmpty();
        assertThat(usual.map().cups())
                .filteredOn(cup -> cup.pad() != null)
                .isNotEmpty()
                .allMatch(cup -> !cup.pad().own());
    }

    @Test
    void aHornThatIsNotThereIsSaid() {
        model.lay("horn", "h-999");
        assertThat(model.view().said()).contains("h-999");
    }
}
