package hornbook.viewer.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.clock.ClockModel;
import hornbook.viewer.clock.TaskChoice;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.paper.PdfText;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheets to the owner, asked for on the screen Jobs of the demonstration shop, and the work that leads to them. */
class PrintingTest {
    @TempDir
    static Path folder;

    private static Workshop shop;
    private JobsModel model;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder.resolve("shop"));
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @BeforeEach
    void anew() {
        ClockModel clock = new ClockModel(
                Work.atOnce(),
                shop.jobs(),
                shop.clocks(),
                new TaskChoice(shop::catalogue, shop.jobs(), shop.usualWork()));
        model = new JobsFromShop(shop, Work.atOnce())
                .model(clock, horn -> {}, name -> Optional.of(folder.resolve(name + ".pdf")));
    }

    private static String text(String name) {
        return PdfText.of(folder.resolve(name));
    }

    private EstimateAnswer expected() {
        return model.view().expected().answer();
    }

    @Test
    void tasksThatCureAFaultAreExpectedOnTheJobBesideWhatIsListed() {
        model.plan("j-0240", List.of("task-regulate-stack"));
        assertThat(model.view().page().card().id()).isEqualTo("j-0240");
        assertThat(expected().lines()).extracting(EstimateAnswer.Line::task).containsExactly("task-regulate-stack");
        model.plan("j-0240", List.of("task-pad-fit", "task-regulate-stack"));
        assertThat(expected().lines())
                .extracting(EstimateAnswer.Line::task)
                .containsExactly("task-regulate-stack", "task-pad-fit");
    }

    /** By hand: four of five jobs under P80; at 60 an hour that is P80 in money, and 20.00 of materials more. */
    @Test
    void theQuoteSaysWhereWorkStopsWhatNeedsAYesAndWhatBecomesOfOldParts() {
        model.inView().open("j-0243");
        model.begin(Act.QUOTE_SHEET);
        assertThat(model.view().remark()).contains("First list the work");
        model.plan("j-0243", List.of("task-pads-out", "task-pad-fit"));
        model.begin(Act.QUOTE_SHEET);
        model.answer(new Answers(Map.of("rate", "sixty")));
        assertThat(model.view().ask().trouble())
                .isEqualTo("money for an hour: “sixty” is no money: write it as 42 or 42.50");
        model.answer(new Answers(Map.of("not", "the case; the strap", "rate", "60", "materials", "20")));
        assertThat(model.view().remark()).contains("quote-j-0243.pdf");
        long limit = expected().p80Min() + 20;
        assertThat(text("quote-j-0243.pdf"))
                .contains("the case", "the strap", "Work stops at " + limit + ":", "cannot be undone", "Old parts")
                .doesNotContain("O-119");
    }

    @Test
    void theHandBackSheetSaysWhatWasNotDoneAndWhatStays() {
        model.inView().open("j-0234");
        assertThat(model.view().page().open()).isFalse();
        model.begin(Act.BACK_SHEET);
        model.answer(new Answers(Map.of("not", "lacquer", "left", "bow dent", "billed", "210", "owner", "yes")));
        assertThat(text("hand-back-j-0234.pdf"))
                .contains("lacquer", "bow dent", "To pay: 210", "Settling in", "Marks and changes agreed", "O-");
    }

    /** One letter begins one act on a job that is open, and another on one that is done. */
    @Test
    void everyLetterBeginsOneAct() {
        for (String job : List.of("j-0243", "j-0234")) {
            model.inView().open(job);
            assertThat(Act.fitting(model.view().page())).extracting(Act::letter).doesNotHaveDuplicates();
            assertThat(Act.fitting(model.view().page()))
                    .allSatisfy(act -> assertThat("hornbook").doesNotContain(String.valueOf(act.letter())));
        }
    }
}
