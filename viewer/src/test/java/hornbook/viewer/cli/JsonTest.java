package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class JsonTest {
    enum Side {
        LEFT_HAND
    }

    record Answer(
            int tookMs,
            String aTitle,
            Optional<String> drawer,
            OptionalInt onHand,
            OptionalDouble probability,
            @Nullable String note,
            LocalDate day,
            Side side,
            Path file,
            List<String> why) {}

    @Test
    void isSnakeCaseInTheRecordsOrderWithoutWhatIsAbsent() {
        Answer bare = new Answer(
                3,
                "t",
                Optional.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                null,
                LocalDate.of(2026, 9, 30),
                Side.LEFT_HAND,
                Path.of("a/b"),
                List.of());
        assertThat(Json.mapper().writeValueAsString(bare))
                .isEqualTo("{\"took_ms\":3,\"a_title\":\"t\",\"day\":\"2026-09-30\",\"side\":\"left_hand\","
                        + "\"file\":\"a/b\",\"why\":[]}");
    }

    @Test
    void writesWhatIsThereAsItIs() {
        Answer full = new Answer(
                3,
                "t",
                Optional.of("B-4"),
                OptionalInt.of(0),
                OptionalDouble.of(0.5),
                "n",
                LocalDate.of(2026, 9, 30),
                Side.LEFT_HAND,
                Path.of("a"),
                List.of("G\u266f"));
        assertThat(Json.mapper().writeValueAsString(full))
                .contains("\"drawer\":\"B-4\",\"on_hand\":0,\"probability\":0.5,\"note\":\"n\"")
                .contains("[\"G\u266f\"]");
    }
}
