package hornbook.catalogue.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.shared.shop.BadInput;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class EstimateTest {
    private static final Catalogue SHIPPED = Catalogue.shipped();

    private static EstimateQuestion alto(TaskCount... tasks) {
        return new EstimateQuestion(List.of(tasks), null, "alto", null);
    }

    /** Without clocks the book speaks: its median, and its spread by the log-normal's quantile (z at 0.8 = 0.8416). */
    @Test
    void aShopWithoutClocksHasTheBook() {
        EstimateAnswer answer = new Estimate(List.of(), SHIPPED).estimate(alto(new TaskCount("task-teardown", 1)));
        assertThat(answer.p50Min()).isCloseTo(answer.bookMin(), within(2L));
        assertThat(answer.p80Min()).isGreaterThan(answer.p50Min());
        assertThat(answer.remarks()).singleElement().asString().contains("no clocks yet");
    }

    @Test
    void aSlowMakeIsKnownAndTheOthersAreNotBlamed() {
        List<Clocked> clocks = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(3);
        List<String> tasks = List.of("task-teardown", "task-reassemble", "task-heights-set", "task-inspect");
        for (int job = 0; job < 120; job++) {
            String make = "k-" + job % 6;
            double slow = job % 6 == 0 ? Math.log(1.4) : 0;
            for (String task : tasks) {
                double book = SHIPPED.tasks().get(task).medianMinutes().get("alto");
                long minutes = Math.round(book * Math.exp(slow + 0.35 * random.nextGaussian()));
                clocks.add(new Clocked("j-" + job, task, "alto", make, null, "N.O.", 1, (int) minutes));
            }
        }
        History history = new History(clocks, new Book(SHIPPED.tasks()));
        double slow = history.effects().effects()[history.place(History.MAKE, "k-0")];
        double usual = history.effects().effects()[history.place(History.MAKE, "k-3")];
        assertThat(slow - usual).isCloseTo(Math.log(1.4), within(0.12));
    }

    @Test
    void theSameQuestionHasTheSameAnswer() {
        Estimate estimate = new Estimate(List.of(), SHIPPED);
        EstimateQuestion question = alto(new TaskCount("task-pad-fit", 24), new TaskCount("task-teardown", 1));
        assertThat(estimate.estimate(question)).isEqualTo(estimate.estimate(question));
        assertThat(estimate.estimate(question).drives()).isEqualTo("task-pad-fit");
    }

    @Test
    void badQuestionsAreOneClearLine() {
        Estimate estimate = new Estimate(List.of(), SHIPPED);
        assertThatThrownBy(() -> estimate.estimate(alto(new TaskCount("task-teardwn", 1))))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("did you mean task-teardown?");
        assertThatThrownBy(() -> estimate.estimate(alto(new TaskCount("task-teardown", 0))))
                .hasMessageContaining("one or more");
        assertThatThrownBy(() -> estimate.estimate(alto(new TaskCount("task-teardown", 9999))))
                .hasMessageContaining("are not on one horn");
        assertThatThrownBy(() -> estimate.estimate(
                        new EstimateQuestion(List.of(new TaskCount("task-teardown", 1)), null, null, null)))
                .hasMessageContaining("--instrument");
        assertThatThrownBy(() -> estimate.estimate(
                        new EstimateQuestion(List.of(new TaskCount("task-teardown", 1)), null, "tenro", null)))
                .hasMessageContaining("did you mean tenor?");
    }
}
