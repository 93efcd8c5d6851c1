package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.workshop.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows on a terminal is what the demo shop answers, line by line. */
class ReadmeTest {
    private static final String PROMPT = "$ viewer/hornbook ";
    private static final String LEFT_OUT = "...";

    @TempDir
    static Path home;

    @BeforeAll
    static void makeShop() {
        try (Workshop demo = DemoShop.in(home.resolve("shop"))) {
            demo.search();
        }
    }

    @Test
    void showsFiveExamplesOrMore() throws IOException {
        assertThat(examples()).hasSizeGreaterThanOrEqualTo(5);
    }

    @TestFactory
    Stream<DynamicTest> eachExampleAnswersAsShown() throws IOException {
        return examples().stream()
                .map(example -> DynamicTest.dynamicTest(example.command(), () -> answersAsShown(example)));
    }

    private static void answersAsShown(Example example) {
        CalledCli called =
                new CalledCli(Map.of("HORNBOOK_SHOP", home.resolve("shop").toString()), "Linux", home);
        int code = called.run(example.command().split(" +"));
        Iterator<String> printed =
                called.out.toString().lines().map(String::strip).iterator();
        assertThat(code).as(called.err.toString()).isEqualTo(ExitCode.DONE);
        boolean gap = false;
        for (String shown : example.shown()) {
            if (shown.equals(LEFT_OUT)) {
                gap = true;
                continue;
            }
            assertThat(next(printed, shown, gap)).isEqualTo(shown);
            gap = false;
        }
        assertThat(gap || !printed.hasNext()).as("nothing more is printed").isTrue();
    }

    /** The next line printed; after a gap, the next that is the one shown. */
    private static String next(Iterator<String> printed, String shown, boolean gap) {
        String line = "";
        while (printed.hasNext()) {
            line = printed.next();
            if (!gap || line.equals(shown)) {
                return line;
            }
        }
        return "(nothing)";
    }

    private static List<Example> examples() throws IOException {
        List<Example> examples = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("..", "README.md"))) {
            String words = line.strip();
            if (words.startsWith(PROMPT)) {
                examples.add(new Example(words.substring(PROMPT.length()), new ArrayList<>()));
            } else if (line.startsWith("    ")
                    && !examples.isEmpty()
                    && examples.getLast().open(line)) {
                examples.getLast().shown().add(words);
            } else if (!examples.isEmpty() && !examples.getLast().shown().isEmpty() && !words.isEmpty()) {
                examples.getLast().close();
            }
        }
        return examples;
    }

    private record Example(String command, List<String> shown, List<String> closed) {
        Example(String command, List<String> shown) {
            this(command, shown, new ArrayList<>());
        }

        boolean open(String line) {
            return closed.isEmpty() && !line.isBlank();
        }

        void close() {
            closed.add(command);
        }
    }
}
