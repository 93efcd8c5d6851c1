package hornbook.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindowSettingsTest {
    @TempDir
    Path folder;

    @Test
    void areReadAsTheyWereWritten() {
        WindowSettings wanted = new WindowSettings(Look.CONTRAST, 1.5);
        wanted.write(folder.resolve("new"));
        assertThat(WindowSettings.read(folder.resolve("new"))).isEqualTo(wanted);
    }

    @ParameterizedTest
    @ValueSource(strings = {"look=plaid", "zoom=big", "zoom=", "\\u00zz"})
    void spoiltOnesAreAsUsual(String line) throws Exception {
        Files.writeString(folder.resolve("window.properties"), line);
        assertThat(WindowSettings.read(folder)).isEqualTo(WindowSettings.USUAL);
    }

    @Test
    void zoomStaysWithinReason() {
        assertThat(WindowSettings.USUAL.zoomed(100).zoom()).isEqualTo(2);
        assertThat(WindowSettings.USUAL.zoomed(0).zoom()).isEqualTo(0.8);
        assertThat(WindowSettings.USUAL.zoomed(Double.NaN).zoom()).isEqualTo(1);
    }

    @ParameterizedTest(name = "{0} lines: {1} px")
    @CsvSource({"600, 17", "800, 17", "1080, 19.5", "2160, 29.4", "4320, 30"})
    void typeGrowsWithTheScreen(double lines, double pixels) {
        assertThat(Dress.typeSize(lines)).isCloseTo(pixels, org.assertj.core.data.Offset.offset(0.1));
    }
}
