package hornbook.catalogue.called;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.shop.BadInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people call tasks, cups and stock, as the trade's lists of tasks, cups and synonyms have them. */
class CalledTest {
    private static final Catalogue SHIPPED = Catalogue.shipped();

    @ParameterizedTest
    @CsvSource({
        "task-pads-out, task-pads-out",
        "pads out, task-pads-out",
        "Neck cork renewed, task-neck-cork",
        "neck cork, task-neck-cork",
        "buzz, task-buzz-hunt",
    })
    void tasksAreKnownByTitleIdAndTheBeginningsOfWords(String typed, String id) {
        assertThat(Called.tasks(SHIPPED).find(typed).id()).isEqualTo(id);
    }

    @ParameterizedTest
    @CsvSource({"cup-low-b, cup-low-b", "low b, cup-low-b", "Low B♭, cup-low-bb", "low bb, cup-low-bb", "g#, cup-gs"})
    void cupsAreKnownWithFlatsAndSharpsAsTheyAreTyped(String typed, String id) {
        assertThat(Called.cups(SHIPPED).find(typed).id()).isEqualTo(id);
    }

    @ParameterizedTest
    @CsvSource({
        "finding-cup-id, finding-cup-id",
        "cup inside diameter, finding-cup-id",
        "bell-rim, bell-rim",
        "Leaks with any pad, f-seam-leak",
    })
    void whatIsFoundOnAHornIsKnownByNameToo(String typed, String id) {
        assertThat(Called.onHorns(SHIPPED).find(typed).id()).isEqualTo(id);
    }

    @Test
    void whatMayBeSeveralIsAskedAboutWithNamesAndIds() {
        assertThatThrownBy(() -> Called.tasks(SHIPPED).find("pad"))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith("“pad” may be any of ")
                .hasMessageContaining("(task-pads-out)");
    }

    @Test
    void aSlipNamesTheNearest() {
        assertThatThrownBy(() -> Called.tasks(SHIPPED).find("task-nek-cork"))
                .isInstanceOf(BadInput.class)
                .hasMessage(
                        "“task-nek-cork” is no task known here: perhaps Neck cork renewed (task-neck-cork) is meant");
    }

    @Test
    void whatNobodyKnowsIsSentToTheSearchBox() {
        assertThatThrownBy(() -> Called.tasks(SHIPPED).find("wash the van outside"))
                .isInstanceOf(BadInput.class)
                .hasMessageEndingWith("“hornbook find wash the van outside” may show what it is called");
    }
}
