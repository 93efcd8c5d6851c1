package hornbook.shared.pads;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.exchange.Published;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The judge itself agrees with assignment examples printed in textbooks and manuals: assignment.csv names each. */
class JudgeTest {
    static Stream<Map<String, String>> matrices() {
        return Published.rows("assignment.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("matrices")
    void findsThePublishedOptimum(Map<String, String> row) {
        double[][] cost = Arrays.stream(row.get("cost_matrix").split(" \\| "))
                .map(line -> Arrays.stream(line.trim().split(" +"))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toArray(double[][]::new);
        assertThat(Judge.least(cost)).isEqualTo(Double.parseDouble(row.get("optimum")));
    }
}
