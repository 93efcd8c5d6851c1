package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings that cannot be are refused in one line, and nothing is written down. */
class JobWordsTest {
    @TempDir
    static Path folder;

    @BeforeAll
    static void makeShop() {
        DemoShop.in(folder.resolve("shop")).close();
    }

    @ParameterizedTest
    @CsvSource({
        "finding-cup-id banana --unit mm, with a unit it has to be a number",
        "finding-cup-id 31.2 --unit mm --where cup-banana, there is no cup",
        "finding-cup-id 31.2 --unit mm --tool tool-none, there is no tool",
        "finding-cup-idd 31.2 --unit mm, perhaps Cup inside diameter (finding-cup-id) is meant",
    })
    void whatCannotBeReadIsNotWrittenDown(String words, String told) {
        CalledCli called =
                new CalledCli(Map.of("HORNBOOK_SHOP", folder.resolve("shop").toString()), "Linux", folder);
        int code = called.run(("job find j-0240 " + words).split(" "));
        assertThat(code).isEqualTo(2);
        assertThat(called.err.toString()).contains(told).hasLineCount(1);
    }
}
