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

    @Test
    void aHornThatIsNotThereIsSaid() {
        model.lay("horn", "h-999");
        assertThat(model.view().said()).contains("h-999");
    }
}
