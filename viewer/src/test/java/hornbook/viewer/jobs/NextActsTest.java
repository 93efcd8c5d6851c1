package hornbook.viewer.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.clock.ClockModel;
import hornbook.viewer.clock.TaskChoice;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is offered large follows the job through its stages (stages.csv: the order of work, common practice). */
class NextActsTest {
    @TempDir
    Path folder;

    private Workshop shop;
    private JobsModel model;

    @BeforeEach
    void open() {
        shop = DemoShop.in(folder.resolve("shop"));
        TaskChoice tasks = new TaskChoice(shop::catalogue, shop.jobs(), shop.usualWork());
        ClockModel clock = new ClockModel(Work.atOnce(), shop.jobs(), shop.clocks(), tasks);
        model = new JobsFromShop(shop, Work.atOnce()).model(clock, horn -> {}, name -> Optional.empty());
        model.inView().open("j-0243");
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void theyFollowTheWork() {
        assertThat(after("task-inspect")).startsWith(Act.CLOCK).contains(Act.ESTIMATE, Act.QUOTE);
        assertThat(after("task-teardown")).contains(Act.DOWN, Act.PHOTO).doesNotContain(Act.QUOTE);
        assertThat(after("task-pad-fit")).contains(Act.MAP, Act.PART);
        assertThat(after("task-play-test-out")).contains(Act.CLOSE);
        model.begin(Act.CLOSE);
        model.answer(
                new hornbook.viewer.ask.Answers(Map.of("grade", "smooth", "sentence", "it held", "back", "stays")));
        assertThat(NextActs.of(model.view().page())).startsWith(Act.HAND_BACK);
        model.begin(Act.HAND_BACK);
        assertThat(NextActs.of(model.view().page())).containsExactly(Act.FOLLOW_UP);
    }

    /** Each act but taking in stands in one group, whatever is offered large. */
    @Test
    void fourAtMostAndNoneTwice() {
        for (String job : java.util.List.of("j-0237", "j-0240", "j-0242", "j-0164")) {
            model.inView().open(job);
            assertThat(NextActs.of(model.view().page()))
                    .hasSizeBetween(1, 4)
                    .doesNotHaveDuplicates()
                    .allMatch(act -> act.fits(model.view().page()));
        }
    }

    @Test
    void aHornThatWasHereIsFoundByItsSerialAndComesInAgain() {
        model.begin(Act.TAKE_IN);
        assertThat(model.view().pick().options())
                .anyMatch(option ->
                        option.words().contains("5873") && option.value().equals("h-193"));
        model.choose("h-193");
        assertThat(model.view().ask().title()).contains("h-193");
        assertThat(model.view().ask().fields()).noneMatch(field -> field.name().equals("serial"));
        model.answer(new hornbook.viewer.ask.Answers(Map.of("complaint", "sold on; new owner asks", "kind", "quick")));
        assertThat(model.view().page().card().horn()).isEqualTo("h-193");
        assertThat(model.view().page().card().complaint()).startsWith("sold on");
    }

    private java.util.List<Act> after(String task) {
        shop.clocks().told("j-0243", task, 1, 10, null, "N.O.");
        model.inView().refresh();
        return NextActs.of(model.view().page());
    }
}
