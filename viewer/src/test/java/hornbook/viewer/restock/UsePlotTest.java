package hornbook.viewer.restock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class UsePlotTest {
    @Test
    void quartersAreCountedFromTheNewestMonth() {
        assertThat(UsePlot.quarters(List.of(9, 1, 2, 3, 0, 0, 4))).containsExactly(6, 4);
        assertThat(UsePlot.quarters(List.of(1, 2))).isEmpty();
        assertThat(UsePlot.quarters(Collections.nCopies(84, 1))).hasSize(20).containsOnly(3);
    }
}
