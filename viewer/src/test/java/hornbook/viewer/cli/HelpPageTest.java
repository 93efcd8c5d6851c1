package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Every help page opens with a line that can be typed as it stands. */
class HelpPageTest {
    @TempDir
    Path home;

    @TestFactory
    Stream<DynamicTest> theExampleOfEachHelpPageWorks() {
        return commands(called().cli().line())
                .map(command ->
                        DynamicTest.dynamicTest(command.getCommandSpec().qualifiedName(), () -> exampleWorks(command)));
    }

    private void exampleWorks(CommandLine command) {
        String first = command.getUsageMessage().lines().findFirst().orElseThrow();
        assertThat(first).startsWith("Example: hornbook ");
        String[] words = first.replaceFirst("Example: hornbook ", "").split(" ");
        CalledCli called = called();
        assertThat(called.run(words)).as(called.err.toString()).isEqualTo(0);
    }

    private CalledCli called() {
        return new CalledCli(Map.of("DISPLAY", ":1"), "Linux", home);
    }

    private static Stream<CommandLine> commands(CommandLine line) {
        return Stream.concat(
                Stream.of(line), line.getSubcommands().values().stream().flatMap(HelpPageTest::commands));
    }
}
