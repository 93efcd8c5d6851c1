package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CliTest {
    @TempDir
    Path home;

    private FaultLog log;

    @BeforeEach
    void keepALog() {
        log = FaultLog.to(home.resolve("state/hornbook.log"));
    }

    @AfterEach
    void closeTheLog() {
        log.close();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "wher               | unknown command wher; did you mean where? See hornbook --help",
                "hwere              | unknown command hwere; did you mean where? See hornbook --help",
                "zzzzzz             | unknown command zzzzzz; see hornbook --help",
                "trian              | unknown command trian; see hornbook --help",
                "where --jsno       | unknown option --jsno for where; did you mean --json? See hornbook where --help",
                "where --shp=/x     | unknown option --shp=/x for where; did you mean --shop? See hornbook where --help",
                "where more         | unknown word more for where; see hornbook where --help",
                "where --shop       | missing required parameter for option '--shop' (DIR); see hornbook where --help",
                "where --as-of noon | invalid value for option '--as-of': \"noon\" is not a day; write it as in 2026-09-30;"
                        + " see hornbook where --help",
            })
    void aLineThatCannotBeUnderstoodGetsOneLineAndTwo(String line, String said) {
        CalledCli called = new CalledCli(home);
        assertThat(called.run(line.split(" "))).isEqualTo(2);
        assertThat(called.err.toString()).isEqualToIgnoringNewLines("hornbook: " + said);
        assertThat(called.out.toString()).isEmpty();
    }

    @Test
    void whereAnswersInOneJsonValue() {
        CalledCli called = new CalledCli(home);
        assertThat(called.run("where", "--json", "--shop", "mine")).isEqualTo(0);
        JsonNode answer = JsonMapper.shared().readTree(called.out.toString());
        assertThat(answer.get("shop").asString()).isEqualTo(home.resolve("mine").toString());
        assertThat(answer.propertyNames()).containsExactly("shop", "demo", "settings", "log");
        assertThat(called.err.toString()).isEmpty();
    }

    @Test
    void theCommonOptionsStandBeforeOrAfterTheCommand() {
        CalledCli before = new CalledCli(home);
        CalledCli after = new CalledCli(home);
        before.run("--shop", "mine", "--json", "where");
        after.run("where", "--shop", "mine", "--json");
        assertThat(before.out.toString()).isEqualTo(after.out.toString()).contains("mine");
    }

    @Test
    void withoutADisplayTheWindowIsRefusedInOneLine() {
        CalledCli called = new CalledCli(home).with((folders, shut) -> {
            throw new AssertionError("opened");
        });
        String headless = System.clearProperty("glass.platform");
        try {
            assertThat(called.run()).isEqualTo(2);
        } finally {
            System.setProperty("glass.platform", headless == null ? "" : headless);
        }
        assertThat(called.err.toString())
                .startsWith("hornbook: there is no display")
                .hasLineCount(1);
    }

    @Test
    void withADisplayTheLineWithoutCommandOpensTheWindowOnTheShop() {
        StringBuilder opened = new StringBuilder();
        CalledCli called = new CalledCli(Map.of("DISPLAY", ":1"), "Linux", home).with((folders, shut) -> {
            opened.append(folders.shop());
            return 0;
        });
        assertThat(called.run("--shop", "/s")).isEqualTo(0);
        assertThat(opened).hasToString("/s");
    }

    @Test
    void eachKindOfFaultHasItsCode() {
        assertThat(failing(new BadInput("lots.csv row 3: no place"))).isEqualTo("2 hornbook: lots.csv row 3: no place");
        assertThat(failing(new ShopUnavailable("held by another"))).isEqualTo("3 hornbook: held by another");
        assertThat(failing(new IllegalStateException("oops\nsecret")))
                .startsWith("4 hornbook: this is a fault of Hornbook's own (IllegalStateException)")
                .endsWith("hornbook.log tells where it happened")
                .doesNotContain("oops");
        assertThat(failing(new StackOverflowError())).startsWith("4 hornbook: this is a fault");
    }

    private String failing(Throwable fault) {
        CalledCli called = new CalledCli(Map.of("DISPLAY", ":1"), "Linux", home).with((folders, shut) -> {
            if (fault instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) fault;
        });
        return called.run("open") + " " + called.err.toString().strip();
    }

    @Test
    void aFaultOfOurOwnIsInTheLogAndOtherwiseThereIsNoLog() throws Exception {
        Path file = home.resolve("state/hornbook.log");
        new CalledCli(home).run("where");
        assertThat(file).doesNotExist();
        failing(new IllegalStateException("the reason"));
        log.close();
        assertThat(Files.readString(file)).contains("the reason").contains("CliTest");
    }
}
