package hornbook.catalogue.identify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.shared.shop.TrialHorn;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The sixty cases of the project's trade notes, drawn by a program apart from this one. The notes say: 44 right at
 * once, 57 within three, mean log loss 0.87 nats. That loss is reached when letters of serials are left out; as
 * defined, letters count, and the loss is 0.79.
 */
class SixtyHornsTest {
    @TempDir
    Path folder;

    private record Score(int first, int withinThree, double loss, int dated, int datable) {}

    @Test
    void plainReckoningScoresAsTheNotesSay() {
        try (Demo demo = new Demo(folder)) {
            Score score = score(demo, true);
            assertThat(score.first()).isEqualTo(44);
            assertThat(score.withinThree()).isEqualTo(57);
            assertThat(score.loss()).isCloseTo(0.79, within(0.005));
            assertThat((double) score.dated() / score.datable())
                    .as("years are an 80 % range")
                    .isGreaterThan(0.8);
        }
    }

    @Test
    void learningDoesNotSpoilIt() {
        try (Demo demo = new Demo(folder)) {
            Score score = score(demo, false);
            assertThat(score.first()).isGreaterThanOrEqualTo(42);
            assertThat(score.withinThree()).isGreaterThanOrEqualTo(57);
            assertThat(score.loss()).isLessThan(0.87);
        }
    }

    private static Score score(Demo demo, boolean plain) {
        Identify identify = demo.identify();
        Score sum = new Score(0, 0, 0, 0, 0);
        List<TrialHorn> cases = demo.books().all(TrialHorn.class);
        for (TrialHorn horn : cases) {
            Question question =
                    Question.of(demo.seen(horn.observations().split(";"))).withSerial(horn.serial());
            sum = add(sum, horn, identify.answer(plain ? question.asPlain() : question), cases.size());
        }
        return sum;
    }

    private static Score add(Score sum, TrialHorn horn, Answer answer, int cases) {
        double p = answer.candidates().stream()
                .filter(c -> c.id().equals(horn.truth()))
                .mapToDouble(Candidate::probability)
                .findFirst()
                .orElse(horn.truth().equals("unlisted") ? answer.unlisted() : 1e-6);
        long better =
                answer.candidates().stream().filter(c -> c.probability() > p).count() + (answer.unlisted() > p ? 1 : 0);
        boolean datable = horn.yearTruth() != null && !horn.serial().isEmpty();
        return new Score(
                sum.first() + (better == 0 ? 1 : 0),
                sum.withinThree() + (better < 3 ? 1 : 0),
                sum.loss() - Math.log(p) / cases,
                sum.dated() + (datable && dated(horn, answer) ? 1 : 0),
                sum.datable() + (datable ? 1 : 0));
    }

    private static boolean dated(TrialHorn horn, Answer answer) {
        return answer.candidates().stream()
                .filter(c -> c.id().equals(horn.truth()) && c.years() != null)
                .anyMatch(c -> c.years().from() <= horn.yearTruth()
                        && horn.yearTruth() <= c.years().to());
    }

    /** Control: the score falls apart if looks are dealt to the wrong horns. */
    @Test
    void looksOfOtherHornsScoreBadly() {
        try (Demo demo = new Demo(folder)) {
            Identify identify = demo.identify();
            List<TrialHorn> cases = demo.books().all(TrialHorn.class);
            int first = 0;
            for (int i = 0; i < cases.size(); i++) {
                String[] others =
                        cases.get((i + 7) % cases.size()).observations().split(";");
                Answer answer = identify.answer(Question.of(demo.seen(others)).asPlain());
                String truth = cases.get(i).truth();
                first += Arrays.asList(truth)
                                .contains(answer.candidates().getFirst().id())
                        ? 1
                        : 0;
            }
            assertThat(first).isLessThan(15);
        }
    }
}
