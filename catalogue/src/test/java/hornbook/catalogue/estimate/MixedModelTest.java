package hornbook.catalogue.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
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

    private static final double[] SCHOOLS = {28, 8, -3, 7, -1, 1, 18, 12};
    private static final MixedModel.Prior NOTHING_BEFORE = new MixedModel.Prior(new double[3], 0);
    private static final double[] SCHOOL_ERRORS = {15, 10, 16, 11, 9, 11, 10, 18};
    private static final int[] HITS = {18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7};

    private static Effects schools(double between) {
        return aboutACommonMean(
                SCHOOLS, Arrays.stream(SCHOOL_ERRORS).map(se -> se * se).toArray(), between);
    }

    /**
     * Eight schools (Rubin 1981; Gelman et al., Bayesian Data Analysis): mu and all eight conditional means for a given
     * tau, computed and checked in R (data from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "5, 7.850983, 9.865885 7.880787 6.885593 7.705267 5.763487 6.677870 9.880787 8.148191",
        "10, 8.126472, 14.241404 8.063236 5.001059 7.616756 3.084222 4.901824 13.063236 9.040040",
    })
    void eightSchools(double tau, double mu, String means) {
        Effects found = schools(tau * tau);
        assertThat(found.effects()[0]).isCloseTo(mu, within(1e-4));
        String[] each = means.split(" ");
        for (int i = 0; i < each.length; i++) {
            assertThat(found.effects()[0] + found.lastEffects()[i])
                    .isCloseTo(Double.parseDouble(each[i]), within(1e-4));
        }
    }

    /** The same schools pooled: 7.685616725, standard error 4.071919158 (printed 7.7, 4.1; R agrees). */
    @Test
    void eightSchoolsPooled() {
        Effects found = schools(1e-9);
        assertThat(found.effects()[0]).isCloseTo(7.685616725, within(1e-5));
        assertThat(Math.sqrt(found.covariance().getEntry(0, 0))).isCloseTo(4.071919158, within(1e-5));
    }

    /** Their heterogeneity is 4.707 on 7 degrees: less than chance gives, so nothing is left between them (tau 0). */
    @Test
    void eightSchoolsAreTakenForAlike() {
        List<Observation> rows = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            rows.add(new Observation(SCHOOLS[i], 1 / (SCHOOL_ERRORS[i] * SCHOOL_ERRORS[i]), new int[] {0, i}));
        }
        Effects found = new MixedModel(new int[] {1, 8}, rows).fit(new double[] {100, 50}, 1, 5000, NOTHING_BEFORE);
        assertThat(found.variances()[1]).isLessThan(5);
    }

    private static Effects players(double[] seen, double within, double factor) {
        double[] variances = new double[seen.length];
        Arrays.fill(variances, within);
        return aboutACommonMean(seen, variances, factor * within / (1 - factor));
    }

    /**
     * Efron and Morris, Stein's Paradox in Statistics, Scientific American 236 (1977): 18 players, 45 at bats; their
     * factor c = 0.211653417 says how far the players spread. All 18 estimates, R agrees.
     */
    @Test
    void eighteenPlayers() {
        double[] printed = {
            0.293913855, 0.289210446, 0.284507036, 0.279803627, 0.275100218, 0.275100218, 0.270396809, 0.265693399,
            0.260989990, 0.260989990, 0.256286581, 0.256286581, 0.256286581, 0.256286581, 0.256286581, 0.251583171,
            0.246879762, 0.242176353
        };
        double[] season = {
            0.346, 0.298, 0.276, 0.222, 0.273, 0.270, 0.263, 0.210, 0.269, 0.230, 0.264, 0.256, 0.303, 0.264, 0.226,
            0.285, 0.316, 0.200
        };
        double[] y = Arrays.stream(HITS).mapToDouble(h -> h / 45.0).toArray();
        Effects found = players(y, 0.004332842216, 0.211653417);
        assertThat(found.effects()[0]).isCloseTo(0.265432099, within(1e-6));
        double raw = 0;
        double shrunk = 0;
        for (int i = 0; i < y.length; i++) {
            double estimate = found.effects()[0] + found.lastEffects()[i];
            assertThat(estimate).isCloseTo(printed[i], within(1e-6));
            raw += Math.pow(y[i] - season[i], 2);
            shrunk += Math.pow(estimate - season[i], 2);
        }
        assertThat(raw).isCloseTo(0.075317, within(1e-6));
        assertThat(shrunk).isCloseTo(0.021307, within(1e-5));
    }

    /** Efron and Morris, JASA 70 (1975) 311-319: the same players on the arcsine scale, factor 0.208974, and back. */
    @Test
    void eighteenPlayersOnTheArcsineScale() {
        double[] printed = {
            0.2901, 0.2858, 0.2815, 0.2771, 0.2726, 0.2726, 0.2681, 0.2636, 0.2589, 0.2589, 0.2541, 0.2541, 0.2541,
            0.2541, 0.2541, 0.2492, 0.2440, 0.2387
        };
        double[] x = Arrays.stream(HITS)
                .mapToDouble(h -> Math.sqrt(45) * Math.asin(2 * h / 45.0 - 1))
                .toArray();
        Effects found = players(x, 1, 0.208974);
        for (int i = 0; i < x.length; i++) {
            double estimate = found.effects()[0] + found.lastEffects()[i];
            assertThat((Math.sin(estimate / Math.sqrt(45)) + 1) / 2).isCloseTo(printed[i], within(6e-5));
        }
    }

    /**
     * By how much a group shrinks is found from the data: the players' spread, fitted, gives a factor between none and
     * theirs (moments, 0.2117; the likeliest value is smaller, as theirs divides by k - 3 and it divides by k).
     */
    @Test
    void theSpreadOfThePlayersIsFound() {
        List<Observation> rows = new ArrayList<>();
        double within = 0.004332842216;
        for (int i = 0; i < HITS.length; i++) {
            rows.add(new Observation(HITS[i] / 45.0 - 0.265432099, 1 / within, new int[] {0, i}));
        }
        Effects found = new MixedModel(new int[] {1, 18}, rows).fit(new double[] {1e-9, 0.001}, 1, 200, NOTHING_BEFORE);
        assertThat(found.rest() + found.variances()[1] / within).isBetween(0.8, 1.4);
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
        double doubt = found.covariance().getEntry(0, 0);
        assertThat(Math.sqrt(doubt)).isCloseTo(0.195180015, within(1e-6));
        double next = Math.sqrt(doubt + 0.25);
        assertThat(60 * Math.exp(found.effects()[0])).isCloseTo(61.086595, within(1e-3));
        assertThat(60 * Math.exp(found.effects()[0] + 0.841621234 * next)).isCloseTo(95.969312, within(1e-3));
        assertThat(60 * Math.exp(found.effects()[0] + 1.281551566 * next)).isCloseTo(121.529727, within(1e-3));
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
        Effects found = new MixedModel(sizes, rows).fit(new double[] {0.02, 0.02, 0.02}, 1, 300, NOTHING_BEFORE);
        assertThat(Math.sqrt(found.variances()[0])).isCloseTo(0.3, within(0.1));
        assertThat(Math.sqrt(found.variances()[1])).isLessThan(0.03);
        assertThat(Math.sqrt(found.variances()[2])).isCloseTo(0.2, within(0.03));
        assertThat(Math.sqrt(found.rest())).isCloseTo(0.5, within(0.02));
    }
}
