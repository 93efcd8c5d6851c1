package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Defaults of the XDG Base Directory Specification 0.8 (freedesktop.org): $HOME/.local/share, $HOME/.config and
 * $HOME/.local/state; relative values are invalid and ignored. Windows' known folders and the macOS Library folders are
 * from memory.
 */
class FoldersTest {
    private static final Path HOME = Path.of("/home/n");

    @ParameterizedTest(name = "{0}, {1}={2}")
    @CsvSource({
        "Linux,    -,             -,      .local/share/hornbook/shop,                      .local/state/hornbook/hornbook.log",
        "Linux,    XDG_DATA_HOME, /d,     /d/hornbook/shop,                                .local/state/hornbook/hornbook.log",
        "Linux,    XDG_DATA_HOME, d,      .local/share/hornbook/shop,                      .local/state/hornbook/hornbook.log",
        "Linux,    XDG_STATE_HOME, /s,    .local/share/hornbook/shop,                      /s/hornbook/hornbook.log",
        "Linux,    HORNBOOK_SHOP, /s,     /s,                                              .local/state/hornbook/hornbook.log",
        "Linux,    HORNBOOK_SHOP, s,      s,                                               .local/state/hornbook/hornbook.log",
        "Mac OS X, -,             -,      Library/Application Support/Hornbook/shop,       Library/Logs/Hornbook/hornbook.log",
        "Windows 11, -,           -,      AppData/Roaming/Hornbook/shop,                   AppData/Local/Hornbook/hornbook.log",
    })
    void standWhereThePlatformHasThem(String system, String variable, String value, String shop, String log) {
        Folders folders = Folders.of(around(system, Map.of(variable, value)));
        assertThat(folders.shop()).isEqualTo(HOME.resolve(shop));
        assertThat(folders.log()).isEqualTo(HOME.resolve(log));
    }

    @Test
    void anEmptyVariableCountsAsNotSet() {
        assertThat(Folders.of(around("Linux", Map.of("XDG_DATA_HOME", ""))).shop())
                .isEqualTo(HOME.resolve(".local/share/hornbook/shop"));
    }

    private static Surroundings around(String system, Map<String, String> variables) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return new Surroundings(variables, system, HOME, HOME, nowhere, nowhere);
    }
}
