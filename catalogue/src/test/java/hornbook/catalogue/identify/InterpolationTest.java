package hornbook.catalogue.identify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InterpolationTest {
    /** Data RPN 14 of F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246. */
    private static final double[] X = {7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20};

    private static final double[] Y = {
        0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994
    };

    /** Anchors made up for the project's trade notes. */
    private static final double[] SERIALS = {10000, 30000, 60000, 61000, 90000};

    private static final double[] YEARS = {1920, 1925, 1930, 1931, 1935};

    /** SciPy's PchipInterpolator. */
    @Test
    void slopesAreThoseOfFritschAndButland() {
        double[] expected = {
            0,
            0.000552508681868,
            0.335876834608,
            0.349449167686,
            0.596958238927,
            0.060321845523,
            0.000900395382769,
            3.14246836304e-05,
            0
        };
        double[] slopes = Interpolation.monotone(X, Y).slopes();
        for (int i = 0; i < expected.length; i++) {
            assertThat(slopes[i]).isCloseTo(expected[i], within(1e-11));
        }
    }

    /** Straight: R approxfun. Monotone: SciPy, R pracma and Strata-math 2.8.0 agree to twelve digits. */
    @ParameterizedTest
    @CsvSource({
        "8, 2.76429e-06, 2.76743386319e-07",
        "8.05, 1.658574e-05, 9.9564741811e-06",
        "8.15, 0.02626093716, 0.0235282783658",
        "8.3, 0.0708040196078, 0.0749632231565",
        "8.5, 0.119993509804, 0.116632576939",
        "8.9, 0.289281, 0.271375584605",
        "9, 0.34933, 0.337534326846",
        "9.5, 0.647295, 0.685217945111",
        "9.8, 0.825162, 0.885228476338",
        "10.5, 0.957464, 0.969198606986",
        "11, 0.971188, 0.986043362535",
        "13, 0.999063666667, 0.999361822092",
        "14, 0.999491333333, 0.999772491707",
        "17, 0.999949, 0.999968025772",
        "19, 0.999979, 0.999991227949"
    })
    void betweenTheKnots(double x, double straight, double monotone) {
        assertThat(Interpolation.linear(X, Y).at(x)).isCloseTo(straight, within(1e-12));
        assertThat(Interpolation.monotone(X, Y).at(x)).isCloseTo(monotone, within(1e-12));
    }

    /** Straight by hand; monotone by SciPy. */
    @ParameterizedTest
    @CsvSource({
        "10000, 1920, 1920",
        "20000, 1922.5, 1922.701576577",
        "45000, 1927.5, 1926.881676637",
        "60500, 1930.5, 1930.506301040",
        "75000, 1932.931034483, 1934.084605738",
        "90000, 1935, 1935"
    })
    void serialToYear(double serial, double straight, double monotone) {
        assertThat(Interpolation.linear(SERIALS, YEARS).at(serial)).isCloseTo(straight, within(1e-9));
        assertThat(Interpolation.monotone(SERIALS, YEARS).at(serial)).isCloseTo(monotone, within(1e-9));
    }

    @Test
    void raggedAnchorsAreJoinedByStraightLinesAndSmoothOnesByTheCubic() {
        assertThat(Interpolation.fitting(SERIALS, YEARS).at(45000)).isCloseTo(1927.5, within(1e-9));
        double[] smooth = {1900, 1904, 1909, 1915, 1922};
        double[] even = {0, 1000, 2000, 3000, 4000};
        assertThat(Interpolation.fitting(even, smooth).at(1500))
                .isEqualTo(Interpolation.monotone(even, smooth).at(1500))
                .isNotEqualTo(Interpolation.linear(even, smooth).at(1500));
    }
}
