package hornbook.viewer.gauges;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.gauges.FitAsked.Field;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The fit pane filled from other records of the demonstration shop; the values stand in its lists of lots and jobs. */
class FitFromTest {
    @TempDir
    static Path folder;

    private static Workshop shop;
    private static FitFrom from;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder.resolve("shop"));
        from = new FitFrom(shop.stock(), shop.jobs(), shop::catalogue);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @Test
    void aRodBringsItsKindSizesAndThread() {
        FitAsked rod = from.of("lot", "lot-0816");
        assertThat(rod.at(Field.KIND)).isEqualTo("Hinge rod");
        assertThat(rod.at(Field.DIAMETER)).isEqualTo("2.38 mm");
        assertThat(rod.at(Field.LENGTH)).isEqualTo("109.0 mm");
        assertThat(rod.at(Field.THREAD)).isEqualTo("2-56 UNC");
        assertThat(rod.at(Field.MODEL)).isEqualTo("m-brindlow-ferryman-alto");
    }

    @Test
    void aRollerBringsItsBoreAndAPadItsSizeForACup() {
        assertThat(from.of("lot", "lot-0180"))
                .extracting(asked -> asked.at(Field.DIAMETER), asked -> asked.at(Field.BORE))
                .containsExactly("5.7 mm", "2.03 mm");
        assertThat(from.of("lot", "lot-0556").at(Field.DIAMETER)).isEqualTo("32.5 mm");
    }

    @Test
    void aHornAJobAndAModelBringTheModel() {
        assertThat(from.of("job", "j-0239").at(Field.MODEL)).isEqualTo("m-brindlow-ferryman-tenor");
        assertThat(from.of("horn", "h-196").at(Field.MODEL)).isEqualTo("m-brindlow-ferryman-tenor");
        assertThat(from.of("model", "m-corvane-lanternist-alto").at(Field.MODEL))
                .isEqualTo("m-corvane-lanternist-alto");
        assertThat(from.of("part", "part-roller").at(Field.KIND)).isEqualTo("Roller");
        assertThat(from.of("drawer", "d-card-r1c1")).isEqualTo(FitAsked.NOTHING);
    }

    /** The rod of the alto, 9 mm too short for the tenor, is found to fit the alto as it is. */
    @Test
    void askedAboutALotTheFieldsAreFilledAndTheAnswerIsThere() {
        FitModel model = new FitModel(Work.atOnce(), shop.fit()::answer, new PieceKinds(shop::catalogue)::all, from);
        List<FitAsked> filled = new ArrayList<>();
        model.onFill(filled::add);
        model.about("lot", "lot-0816");
        assertThat(filled).containsExactly(from.of("lot", "lot-0816"));
        assertThat(model.view().answer()).isNotNull();
        assertThat(model.view().answer().plans().getFirst().lot()).isEqualTo("lot-0816");
        assertThat(model.view().answer().plans().getFirst().steps()).isEmpty();
    }
}
