package hornbook.catalogue.identify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published reckonings, made with this package's own pieces. Of the two things called Laplace smoothing (one more of
 * each value; that, and one more of each class) Hornbook does neither to what an entry states: it smooths the prior,
 * horns seen + 1, and spreads misses over the values.
 */
class ReferenceTest {
    /** J. R. Quinlan, Induction of Decision Trees, Machine Learning 1 (1986): play, or not, by the weather. */
    private static final Lens WEATHER = new Lens(
            "outlook temperature humidity windy play",
            "sunny hot high false no",
            "sunny hot high true no",
            "overcast hot high false yes",
            "rainy mild high false yes",
            "rainy cool normal false yes",
            "rainy cool normal true no",
            "overcast cool normal true yes",
            "sunny mild high false no",
            "sunny cool normal false yes",
            "rainy mild normal false yes",
            "sunny mild normal true yes",
            "overcast mild high true yes",
            "overcast hot normal false yes",
            "rainy mild high true no");

    /** J. Cendrowska, PRISM, Int. J. Man-Machine Studies 27 (1987): which lens to fit. */
    private static final Lens LENSES = new Lens(
            "age spectacle-prescrip astigmatism tear-prod-rate lens",
            "young myope no reduced none",
            "young myope no normal soft",
            "young myope yes reduced none",
            "young myope yes normal hard",
            "young hypermetrope no reduced none",
            "young hypermetrope no normal soft",
            "young hypermetrope yes reduced none",
            "young hypermetrope yes normal hard",
            "middle myope no reduced none",
            "middle myope no normal soft",
            "middle myope yes reduced none",
            "middle myope yes normal hard",
            "middle hypermetrope no reduced none",
            "middle hypermetrope no normal soft",
            "middle hypermetrope yes reduced none",
            "middle hypermetrope yes normal none",
            "old myope no reduced none",
            "old myope no normal none",
            "old myope yes reduced none",
            "old myope yes normal hard",
            "old hypermetrope no reduced none",
            "old hypermetrope no normal soft",
            "old hypermetrope yes reduced none",
            "old hypermetrope yes normal none");

    @Test
    void entropyOfNineToFive() {
        assertThat(Scales.entropy(WEATHER.prior(0))).isCloseTo(0.9402859587, within(1e-9));
        assertThat(Scales.entropy(9 / 14.0)).isCloseTo(0.9402859587, within(1e-9));
    }

    /** Figures cross-checked with Weka 3.8.6; gains are made from rows of floats. */
    @ParameterizedTest
    @CsvSource({
        "outlook, 0.2467498198, 0.1564275624",
        "humidity, 0.1518355014, 0.1518355014",
        "windy, 0.0481270304, 0.0488486155",
        "temperature, 0.0292225657, 0.0187726462"
    })
    void gainsOfTheWeather(String look, double gain, double ratio) {
        assertThat(WEATHER.gain(look)).isCloseTo(gain, within(1e-5));
        double own = Scales.entropy(WEATHER.marginal(look));
        assertThat(WEATHER.gain(look) / own).isCloseTo(ratio, within(1e-5));
    }

    /** Figures cross-checked with Weka 3.8.6. */
    @ParameterizedTest
    @CsvSource({
        "age, 0.0393965036",
        "spectacle-prescrip, 0.0395108354",
        "astigmatism, 0.3770052300",
        "tear-prod-rate, 0.5487949407"
    })
    void gainsOfTheLenses(String look, double gain) {
        assertThat(LENSES.gain(look)).isCloseTo(gain, within(1e-5));
    }

    @Test
    void lensesAreKnownAgainFromTheirOwnTable() {
        assertThat(LENSES.right(1)).as("Weka 3.8.6: of 24").isEqualTo(23);
    }

    /** Witten and Frank, Data Mining (20.5 %); R e1071 naiveBayes, laplace 0 and 1; Weka NaiveBayes. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, outlook=sunny temperature=cool humidity=high windy=true, 0.204582651",
        "1, 0, outlook=sunny temperature=cool humidity=high windy=true, 0.279933349",
        "1, 1, outlook=sunny temperature=cool humidity=high windy=true, 0.264686023",
        "1, 1, temperature=cool humidity=high windy=true, 0.418579818",
        "1, 1, outlook=overcast, 0.847457627"
    })
    void chanceOfPlay(double onShares, double onPrior, String looks, double yes) {
        double[] posterior = WEATHER.posterior(onShares, onPrior, looks.split(" "));
        assertThat(posterior[WEATHER.entry("yes")]).isCloseTo(yes, within(1e-8));
    }

    /** Bayes' rule; the second and third with a hypothesis "unlisted" of flat likelihood (computed by hand). */
    @ParameterizedTest
    @CsvSource({
        ".01 .99, .99 .05, , 0.1666666667",
        ".5 .3 .15 .05, .9 .2 .1 .25, .7 .6 .05 .25, 0.887636492 0.101444170 0.002113420 0.008805918",
        ".5 .3 .15 .05, .01 .02 .01 .25, , 0.2 0.24 0.06 0.5"
    })
    void bayes(String prior, String first, String second, String posterior) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece("1", null, logs(first)));
        if (second != null) {
            pieces.add(new Piece("2", null, logs(second)));
        }
        double[] expected = numbers(posterior);
        double[] got = Scales.posterior(numbers(prior), pieces);
        for (int i = 0; i < expected.length; i++) {
            assertThat(got[i]).isCloseTo(expected[i], within(1e-9));
        }
    }

    /** C. E. Shannon 1948: what a yes or no is expected to tell, reckoned both ways. */
    @Test
    void expectedGainOfAYesOrNo() {
        double[] prior = numbers(".5 .3 .15 .05");
        double[] yes = numbers(".9 .2 .1 .5");
        LookMatrix matrix = new LookMatrix(4, new int[] {2});
        for (int e = 0; e < 4; e++) {
            matrix.put(e, 0, new double[] {yes[e], 1 - yes[e]});
        }
        assertThat(Scales.entropy(prior)).isCloseTo(1.647730922, within(1e-9));
        assertThat(matrix.answers(matrix.product(prior), 0)[0]).isCloseTo(0.55, within(1e-6));
        assertThat(matrix.gains(prior)[0]).isCloseTo(0.421348890, within(1e-5));
    }

    private static double[] logs(String chances) {
        double[] logs = numbers(chances);
        for (int i = 0; i < logs.length; i++) {
            logs[i] = Math.log(logs[i]);
        }
        return logs;
    }

    private static double[] numbers(String text) {
        return List.of(text.trim().split(" ")).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
