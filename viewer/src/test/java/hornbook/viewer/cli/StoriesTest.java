package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Stories 2, 3 and 5 of the demonstration shop, followed by commands: stock goes down and labels come right. The right
 * answers are those of the shop's own description (scenario, section 4), written with its data.
 */
class StoriesTest {
    @TempDir
    Path folder;

    private CalledCli called;

    @BeforeEach
    void makeShop() {
        try (Workshop demo = DemoShop.in(folder.resolve("shop"))) {
            assertThat(demo.name()).isNotBlank();
        }
    }

    private int run(String... line) {
        called = new CalledCli(folder);
        return called.run(
                Stream.concat(Stream.of("--shop", "shop"), Stream.of(line)).toArray(String[]::new));
    }

    private JsonNode done(String... line) {
        List<String> json = new ArrayList<>(List.of(line));
        json.add("--json");
        assertThat(run(json.toArray(String[]::new)))
                .as(String.join(" ", line) + ": " + called.err)
                .isZero();
        return JsonMapper.shared().readTree(called.out.toString());
    }

    private String count(String lot) {
        return done("lot", lot).path("count").asString();
    }

    @Test
    void theSpannerThatTurnsTwoThings() {
        JsonNode hits = done("find", "two-pin spanner").path("hits");
        assertThat(hits.toString()).contains("d-card-r3c6");
        assertThat(count("lot-0933")).isEqualTo("7");
        done("job", "part", "j-0237", "lot-0933", "2", "--for", "bearing sleeves");
        assertThat(count("lot-0933")).isEqualTo("5");
        assertThat(run("job", "part", "j-0237", "lot-0935", "2"))
                .as("the reserve is left alone")
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(count("lot-0935")).isEqualTo("10");
        JsonNode job = done("job", "met", "j-0237", "q-threaded-bearing");
        assertThat(job.path("quirks_met").toString()).contains("q-threaded-bearing");
        assertThat(job.path("parts").get(0).path("lot").asString()).isEqualTo("lot-0933");
        done("look-through", "d-card-r3c6", "--label", "bumper holders, two-pin spanner");
        assertThat(done("drawer", "d-card-r3c6").path("label").asString()).contains("two-pin spanner");
    }

    @Test
    void discsInTheWrongDrawer() {
        assertThat(done("find", "corvane disc 19").path("hits").toString()).contains("d-card-r5c5");
        for (String lot : List.of("lot-0260", "lot-0262")) {
            assertThat(count(lot)).isEqualTo("3");
            done("job", "part", "j-0238", lot, "1", "--for", "lost disc");
            assertThat(count(lot)).isEqualTo("2");
        }
        assertThat(run("job", "part", "j-0238", "lot-0496"))
                .as("the pattern is never used")
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run("job", "part", "j-0238", "lot-0490"))
                .as("the graded set is reserve")
                .isEqualTo(ExitCode.BAD_INPUT);
        done("look-through", "d-card-r5c5", "--label", "Corvane discs");
        JsonNode drawer = done("drawer", "d-card-r5c5");
        assertThat(drawer.path("label").asString()).isEqualTo("Corvane discs");
        done("undo");
        done("undo");
        assertThat(count("lot-0262")).as("the last disc goes back").isEqualTo("3");
        assertThat(done("drawer", "d-card-r5c5").path("label").asString()).isEqualTo("buttons, misc.");
    }

    @Test
    void twoRepadsFromOneTray() {
        JsonNode plan = done("pads", "--job", "j-0240", "--job", "j-0241");
        assertThat(plan.path("assignments").size()).isEqualTo(47);
        assertThat(plan.path("half_steps").asInt()).isEqualTo(2);
        assertThat(plan.path("short").get(0).path("cup").asString()).isEqualTo("cup-d");
        int before = total(plan);
        for (JsonNode pad : plan.path("assignments")) {
            done(
                    "job",
                    "pad",
                    pad.path("job").asString(),
                    pad.path("cup").asString(),
                    pad.path("size").asString(),
                    "--lot",
                    pad.path("lot").asString());
        }
        assertThat(total(plan)).isEqualTo(before - 47);
        assertThat(done("job", "show", "j-0240").path("pads").size()
                        + done("job", "show", "j-0241").path("pads").size())
                .isEqualTo(47);
        assertThat(run("pads", "--job", "j-0241"))
                .as("nothing waits there any more")
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done("pads", "--job", "j-0240")
                        .path("short")
                        .get(0)
                        .path("size")
                        .asString())
                .isEqualTo("33.5");
    }

    /** Usual tenon of an alto 23.5 to 25.0 mm: findings.csv, common practice, from memory. */
    @Test
    void aReadingOutOfTheUsualIsAskedAboutAndKept() {
        done("job", "find", "j-0240", "finding-tenon-od", "27.1", "--unit", "mm");
        assertThat(called.err.toString()).contains("outside the usual 23.5-25.0");
        done("job", "find", "j-0240", "finding-tenon-od", "24.2", "--unit", "mm");
        assertThat(called.err.toString()).isEmpty();
        assertThat(run("job", "find", "j-0240", "finding-tenon-o", "24.2")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(called.err.toString()).contains("perhaps Neck tenon outside diameter (finding-tenon-od) is meant");
    }

    /** What the lots of a plan hold, all together. */
    private int total(JsonNode plan) {
        return plan.path("assignments")
                .valueStream()
                .map(pad -> pad.path("lot").asString())
                .distinct()
                .mapToInt(lot -> Integer.parseInt(count(lot)))
                .sum();
    }
}
