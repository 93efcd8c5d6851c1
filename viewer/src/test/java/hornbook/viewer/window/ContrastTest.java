package hornbook.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contrast as defined by WCAG 2.2 (W3C): success criteria 1.4.3 (text, 4.5 to 1), 1.4.6 (enhanced, 7 to 1) and 1.4.11
 * (edges of controls, 3 to 1).
 */
class ContrastTest {
    private static final Pattern COLOUR = Pattern.compile("(-horn-[a-z-]+): #([0-9a-f]{6});");

    @ParameterizedTest(name = "{0} on {1}")
    @CsvSource({
        "ink, paper, 7, 7",
        "ink, card, 7, 7",
        "ink-soft, paper, 4.5, 7",
        "ink-soft, card, 4.5, 7",
        "slate-ink, slate, 7, 7",
        "slate-ink, slate-lit, 4.5, 7",
        "slate-soft, slate, 4.5, 7",
        "slate-soft, slate-lit, 4.5, 7",
        "on-brass, brass, 4.5, 7",
        "brass-ink, paper, 4.5, 7",
        "brass-ink, card, 4.5, 7",
        "ink, brass-lit, 7, 7",
        "stock, card, 4.5, 7",
        "stock, paper, 4.5, 7",
        "stock, stock-lit, 4.5, 7",
        "warn, card, 4.5, 7",
        "warn, warn-lit, 4.5, 7",
        "stop, card, 4.5, 7",
        "stop, stop-lit, 4.5, 7",
        "edge, card, 3, 7",
        "edge, paper, 3, 7",
        "brass, slate, 3, 7",
        "part, card, 3, 7",
        "ink, metal, 4.5, 7",
        "part, metal, 3, 4.5",
    })
    void inkStandsOutFromWhatItIsOn(String ink, String ground, double usual, double high) {
        assertThat(contrast("light", ink, ground)).as("light").isGreaterThanOrEqualTo(usual);
        assertThat(contrast("dark", ink, ground)).as("dark").isGreaterThanOrEqualTo(usual);
        assertThat(contrast("contrast", ink, ground)).as("contrast").isGreaterThanOrEqualTo(high);
    }

    /** Black on white is 21 to 1, and #777 on white 4.48 to 1 (WCAG's own examples). */
    @Test
    void theFormulaAgreesWithItsOwnExamples() {
        assertThat(ratio("000000", "ffffff")).isEqualTo(21.0);
        assertThat(ratio("777777", "ffffff")).isBetween(4.47, 4.49);
    }

    @Test
    void everyPaletteNamesTheSameColours() {
        assertThat(palette("dark").keySet())
                .isEqualTo(palette("light").keySet())
                .hasSizeGreaterThan(15);
        assertThat(palette("contrast").keySet()).isEqualTo(palette("light").keySet());
    }

    private static double contrast(String palette, String ink, String ground) {
        Map<String, String> colours = palette(palette);
        return ratio(
                Objects.requireNonNull(colours.get("-horn-" + ink)),
                Objects.requireNonNull(colours.get("-horn-" + ground)));
    }

    private static double ratio(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String rgb) {
        return 0.2126 * linear(rgb, 0) + 0.7152 * linear(rgb, 2) + 0.0722 * linear(rgb, 4);
    }

    private static double linear(String rgb, int at) {
        double c = Integer.parseInt(rgb.substring(at, at + 2), 16) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static Map<String, String> palette(String name) {
        try (var file = Objects.requireNonNull(Dress.class.getResourceAsStream(name + ".css"))) {
            Matcher matcher = COLOUR.matcher(new String(file.readAllBytes(), StandardCharsets.UTF_8));
            Map<String, String> colours = new HashMap<>();
            while (matcher.find()) {
                colours.put(matcher.group(1), matcher.group(2));
            }
            return colours;
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }
}
