package hornbook.viewer.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TextFlowTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void longTextRunsOverPagesAndNoWordIsLost(PaperSize paper) {
        Path pdf = folder.resolve("text.pdf");
        String words = IntStream.range(0, 2500).mapToObj(n -> "w" + n).collect(Collectors.joining(" "));
        try (Sheet sheet = new Sheet(paper, "Text")) {
            TextFlow flow = new TextFlow(sheet, "Text");
            flow.heading("First");
            flow.paragraph(words);
            flow.point("last point");
            assertThat(sheet.pages()).isGreaterThan(1);
            sheet.save(pdf);
        }
        List<String> read = List.of(Rendered.text(pdf).split("\\s+"));
        assertThat(read).containsSubsequence(words.split(" ")).containsSubsequence("last", "point");
        Rendered second = Rendered.page(pdf, 2, 60);
        assertThat(second.inked(new Rectangle2D.Double(0, 0, 14, paper.height())))
                .isFalse();
        assertThat(second.inked(new Rectangle2D.Double(paper.width() - 14, 0, 14, paper.height())))
                .isFalse();
    }

    @Test
    void aHeadingGoesToThePageOfWhatFollows() {
        Path pdf = folder.resolve("text.pdf");
        try (Sheet sheet = new Sheet(PaperSize.A4, "Text")) {
            TextFlow flow = new TextFlow(sheet, "Text");
            flow.room(245);
            flow.heading("Second", 20);
            flow.room(20);
            assertThat(sheet.pages()).isEqualTo(2);
            sheet.save(pdf);
        }
        assertThat(Rendered.page(pdf, 1, 60).inked(new Rectangle2D.Double(15, 15, 180, 265)))
                .isFalse();
    }

    /** One sign a millimetre: what fits can be counted. */
    @ParameterizedTest(name = "“{0}” in {1} lines of {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "one two three | 9 | 7  | one two/three",
                "one two three | 1 | 7  | one tw…",
                "one two three | 1 | 13 | one two three",
                "unbreakable   | 9 | 4  | unbr/eaka/ble",
                "unbreakable   | 2 | 4  | unbr/eak…",
                "''            | 3 | 4  | ''",
                "a b           | 0 | 4  | ''",
            })
    void linesBreakBetweenWordsAndEndInAnEllipsis(String text, int most, int width, String lines) {
        assertThat(String.join("/", new Lines(width, String::length).first(most, text)))
                .isEqualTo(lines);
    }
}
