package hornbook.catalogue.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The solver against published shrinkage: what a group is taken to be lies between itself and the others. */
class MixedModelTest {
    private static final double FREE = 1e10;

    /** One group a row, about a common mean that is left free. */
    private static Effects aboutACommonMean(double[] values, double[] variances, double between) {
        List<Observation> rows = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            rows.add(new Observation(values[i], 1 / variances[i], new int[] {0, i}));
        }
        return new MixedModel(new int[] {1, values.length}, rows).solve(new double[] {FREE, between}, 1);
    }

    /**
     * Eight schools (Rubin 1981; Gelman et al., Bayesian Data Analysis): mu and conditional means for a given tau,
     * computed and checked in R (data from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "5, 7.850983, 9.865885, 5.763487",
        "10, 8.126472, 14.241404, 3.084222",
    })
    void eightSchools(double tau, double mu, double first, double fifth) {
        double[] y = {28, 8, -3, 7, -1, 1, 18, 12};
        double[] se = {15, 10, 16, 11, 9, 11, 10, 18};
        double[] variances = new double[8];
        for (int i = 0; i < 8; i++) {
            variances[i] = se[i] * se[i];
        }
        Effects found = aboutACommonMean(y, variances, tau * tau);
        assertThat(found.effects()[0]).isCloseTo(mu, within(1e-4));
        assertThat(found.effects()[0] + found.lastEffects()[0]).isCloseTo(first, within(1e-4));
        assertThat(found.effects()[0] + found.lastEffects()[4]).isCloseTo(fifth, within(1e-4));
    }

    /**
     * Efron and Morris, Stein's Paradox in Statistics, Scientific American 236 (1977): 18 players, 45 at bats; their
     * factor c = 0.211653417 says how far the players spread.
     */
    @Test
    void eighteenPlayers() {
        int[] hits = {18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7};
        double within = 0.004332842216;
        double c = 0.211653417;
        double[] y = new double[18];
        double[] variances = new double[18];
        for (int i = 0; i < 18; i++) {
            y[i] = hits[i] / 45.0;
            variances[i] = within;
        }
        Effects found = aboutACommonMean(y, variances, c * within / (1 - c));
        assertThat(found.effects()[0]).isCloseTo(0.265432099, within(1e-6));
        assertThat(found.effects()[0] + found.lastEffects()[0]).isCloseTo(0.293913855, within(1e-6));
        assertThat(found.effects()[0] + found.lastEffects()[8]).isCloseTo(0.260989990, within(1e-6));
        assertThat(found.effects()[0] + found.lastEffects()[17]).isCloseTo(0.242176353, within(1e-6));
    }

    /** Normal prior, normal data (Gelman et al., Bayesian Data Analysis, ch. 2): prior ln 60, sd 0.4; sigma 0.5. */
    @Test
    void fiveJobsAgainstThePrior() {
        List<Observation> rows = new ArrayList<>();
        int[] minutes = {30, 45, 60, 90, 120};
        for (int i = 0; i < 5; i++) {
            rows.add(new Observation(Math.log(minutes[i] / 60.0), 1 / 0.25, new int[] {0, i}));
        }
        Effects found = new MixedModel(new int[] {1, 5}, rows).solve(new double[] {0.16, 1e-12}, 1);
        assertThat(Math.log(60) + found.effects()[0]).isCloseTo(4.112292453, within(1e-6));
        assertThat(Math.sqrt(found.covariance().getEntry(0, 0))).isCloseTo(0.195180015, within(1e-6));
    }

    /** Drawn with known spreads, they are found again; a factor that does nothing is shrunk to nothing. */
    @Test
    void spreadsThatWereDrawnAreFound() {
        SplittableRandom random = new SplittableRandom(7);
        double[] truth = {0.3, 0.0, 0.2};
        int[] sizes = {30, 12, 300};
        double[][] effects = new double[3][];
        for (int k = 0; k < 3; k++) {
            effects[k] = new double[sizes[k]];
            for (int i = 0; i < sizes[k]; i++) {
                effects[k][i] = truth[k] * random.nextGaussian();
            }
        }
        List<Observation> rows = new ArrayList<>();
        for (int i = 0; i < 4000; i++) {
            int[] at = {random.nextInt(30), random.nextInt(12), i % 300};
            double y = effects[0][at[0]] + effects[1][at[1]] + effects[2][at[2]] + 0.5 * random.nextGaussian();
            rows.add(new Observation(y, 1, at));
        }
        Effects found = new MixedModel(sizes, rows).fit(new double[] {0.02, 0.02, 0.02}, 1, 300);
        assertThat(Math.sqrt(found.variances()[0])).isCloseTo(0.3, within(0.1));
        assertThat(Math.sqrt(found.variances()[1])).isLessThan(0.03);
        assertThat(Math.sqrt(found.variances()[2])).isCloseTo(0.2, within(0.03));
        assertThat(Math.sqrt(found.rest())).isCloseTo(0.5, within(0.02));
    }
}
