package hornbook.catalogue.identify;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A seeded part of the trial; the whole of it is the program {@link AskingTrial}. Bounds: the project's figures. */
class TrialTest {
    private static final int HORNS = 30;
    private static final int ALL_LOOKS = 100;

    @TempDir
    static Path folder;

    private static Knowledge plain;

    @BeforeAll
    static void open() {
        try (Demo demo = new Demo(folder)) {
            plain = Knowledge.plain(demo.catalogue(), new ExperienceReader(demo.catalogue(), demo.books()).read());
        }
    }

    @AfterAll
    static void forget() {
        plain = null;
    }

    @Test
    void toldLooksNeedLessThanHalfOfARandomOrder() {
        Trial trial = new Trial(plain, 1, 0, 11);
        double told = 0;
        double offered = 0;
        double random = 0;
        for (int i = 0; i < HORNS; i++) {
            int truth = trial.draw();
            told += trial.ask(truth, Trial.Order.GAIN_FOR_COST, ALL_LOOKS).looks();
            offered += trial.ask(truth, Trial.Order.AS_OFFERED, ALL_LOOKS).looks();
            random += trial.ask(truth, Trial.Order.RANDOM, ALL_LOOKS).looks();
        }
        assertThat(told / random).isLessThanOrEqualTo(0.45);
        assertThat(offered / random).as("guarding against quirks as well").isLessThanOrEqualTo(0.65);
    }

    @Test
    void oneAnswerInEightWrongStillLeavesTheTruthAmongThree() {
        Trial trial = new Trial(plain, ExponentFit.USUAL, 0.125, 12);
        int among = 0;
        for (int i = 0; i < HORNS; i++) {
            among += trial.ask(trial.draw(), Trial.Order.AS_OFFERED, 20).place() <= 3 ? 1 : 0;
        }
        assertThat((double) among / HORNS).isGreaterThanOrEqualTo(0.9);
    }

    /** The control: told nothing true, it cannot know. */
    @Test
    void answersThatAreAllWrongLoseIt() {
        Trial trial = new Trial(plain, ExponentFit.USUAL, 1, 13);
        int among = 0;
        for (int i = 0; i < HORNS; i++) {
            among += trial.ask(trial.draw(), Trial.Order.GAIN_FOR_COST, 20).place() <= 3 ? 1 : 0;
        }
        assertThat((double) among / HORNS).isLessThan(0.5);
    }
}
