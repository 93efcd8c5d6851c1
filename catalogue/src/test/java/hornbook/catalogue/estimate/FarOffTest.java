package hornbook.catalogue.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FarOffTest {
    private static final Catalogue SHIPPED = Catalogue.shipped();
    private static final Book BOOK = new Book(SHIPPED.tasks());
    private static final List<String> TASKS =
            List.of("task-teardown", "task-reassemble", "task-heights-set", "task-inspect", "task-write-up");

    private static Clocked clocked(String job, String task, double times) {
        double book = BOOK.minutes(task, "alto").orElseThrow();
        return new Clocked(job, task, "alto", "k-a", null, "N.O.", 1, (int) Math.round(book * times));
    }

    /** Times as the book has them: drawn log-normal with each task's own spread. */
    private static List<Clocked> honest(int jobs, double slow, long number) {
        SplittableRandom random = new SplittableRandom(number);
        List<Clocked> clocks = new ArrayList<>();
        for (int job = 0; job < jobs; job++) {
            double all = slow * Math.exp(0.15 * random.nextGaussian());
            for (String task : TASKS) {
                double sigma = SHIPPED.tasks().get(task).sigma();
                clocks.add(clocked("j-" + job, task, all * Math.exp(sigma * random.nextGaussian())));
            }
        }
        return clocks;
    }

    private static long p80(List<Clocked> clocks) {
        EstimateQuestion question = new EstimateQuestion(
                TASKS.stream().map(task -> new TaskCount(task, 1)).toList(), null, "alto", null);
        return new Estimate(clocks, SHIPPED).estimate(question).p80Min();
    }

    private static List<Clocked> and(List<Clocked> clocks, Clocked... more) {
        List<Clocked> all = new ArrayList<>(clocks);
        all.addAll(List.of(more));
        return all;
    }

    @Test
    void fortyHoursOnATaskOfMinutesMovesNothingAndIsNamed() {
        List<Clocked> honest = honest(30, 1, 5);
        Clocked absurd = clocked("j-absurd", "task-write-up", 240);
        assertThat(p80(and(honest, absurd))).isEqualTo(p80(honest));
        EstimateAnswer answer = new Estimate(and(honest, absurd), SHIPPED)
                .estimate(new EstimateQuestion(List.of(new TaskCount("task-teardown", 1)), null, "alto", null));
        assertThat(answer.leftOut()).singleElement().satisfies(left -> {
            assertThat(left.job()).isEqualTo("j-absurd");
            assertThat(left.minutes()).isEqualTo(absurd.minutes());
        });
        assertThat(answer.remarks())
                .singleElement()
                .asString()
                .contains("left out", "hornbook job count j-absurd task-write-up 1 --minutes");
        assertThat(answer.fromJobs().all()).isEqualTo(30);
    }

    @Test
    void aNoughtOfAForgottenClockIsLeftOutToo() {
        List<Clocked> honest = honest(30, 1, 6);
        assertThat(new FarOff(BOOK)
                        .part(and(honest, clocked("j-nought", "task-reassemble", 0)))
                        .leftOut())
                .extracting(Clocked::job)
                .containsExactly("j-nought");
    }

    /** Under 3.5 median distances lie all but 0.05 in 100 of normal values. */
    @Test
    void honestTimesStay() {
        List<Clocked> honest = honest(2000, 1.3, 7);
        int out = new FarOff(BOOK).part(honest).leftOut().size();
        assertThat(100.0 * out / honest.size()).isLessThan(0.1);
    }

    /** What the book has wrong by far is not put down to the clocks, once there are a few. */
    @Test
    void aTaskThatAlwaysTakesFiveTimesTheBookIsBelieved() {
        List<Clocked> clocks = new ArrayList<>(honest(20, 1, 8));
        for (int job = 0; job < 6; job++) {
            clocks.add(clocked("j-" + job, "task-regulate-full", 5));
        }
        assertThat(new FarOff(BOOK).part(clocks).leftOut()).isEmpty();
    }

    /** Control: with a mean and a standard deviation the same time hides itself among few. */
    @Test
    void amongFewItIsFoundAsWell() {
        List<Clocked> few = honest(2, 1, 9);
        assertThat(new FarOff(BOOK)
                        .part(and(few, clocked("j-absurd", "task-inspect", 240)))
                        .leftOut())
                .hasSize(1);
        double[] logs = and(few, clocked("j-absurd", "task-inspect", 240)).stream()
                .mapToDouble(BOOK::log)
                .toArray();
        double mean = java.util.Arrays.stream(logs).average().orElseThrow();
        double deviation = Math.sqrt(java.util.Arrays.stream(logs)
                        .map(log -> (log - mean) * (log - mean))
                        .sum()
                / (logs.length - 1));
        assertThat((logs[logs.length - 1] - mean) / deviation).isLessThan(3.5);
    }

    @Test
    void withSlipsTheEstimatesStayAsHonestAsWithout() {
        ClockedShopsTrial.Tally with =
                ClockedShopsTrial.run(6, 4, new int[] {60}, true).get(0);
        ClockedShopsTrial.Tally without =
                ClockedShopsTrial.run(6, 4, new int[] {60}, false).get(0);
        assertThat(with.error()).isCloseTo(without.error(), within(0.03));
        assertThat(with.error()).isLessThan(with.meanError());
    }
}
