package hornbook.catalogue.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The subset as SUBSET.md states it: what is of it is read, what is not is named with its line. */
class PictureReaderTest {
    private static final String ROOT = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 160 160\">\n";
    private static final String TITLE = "<title>A line.</title>\n";
    private static final String LINE = "<line class='line' x1='1' y1='2' x2='3' y2='4'/>\n";

    @Test
    void readsEveryElementOfTheSubset() {
        Picture picture = read(
                ROOT + TITLE + "<g>" + LINE + "<g><circle id='cup-g' class='paper' cx='1' cy='2' r='3'/></g></g>"
                        + "<path class='part' d='M1 1 L2 2'/><ellipse class='ink' cx='1' cy='2' rx='3' ry='4'/>"
                        + "<rect class='body' x='1' y='2' width='3' height='4' rx='1'/>"
                        + "<polyline class='thin' points='1,1 2,2'/><polygon class='part-fill' points='1,1 2,2 3,1'/></svg>");
        assertThat(picture.alt()).isEqualTo("A line.");
        assertThat(picture.width()).isEqualTo(160);
        assertThat(picture.shapes())
                .extracting(Shape::kind)
                .containsExactly(
                        ShapeKind.LINE,
                        ShapeKind.CIRCLE,
                        ShapeKind.PATH,
                        ShapeKind.ELLIPSE,
                        ShapeKind.RECT,
                        ShapeKind.POLYLINE,
                        ShapeKind.POLYGON);
        assertThat(picture.shapes().get(1).id()).isEqualTo("cup-g");
        assertThat(picture.shapes().get(6).pen()).isEqualTo(Pen.PART_FILL);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "<text class='line'>A</text> | line 3: <text> is not of the subset",
                "<image class='line' href='x.png'/> | line 3: <image> is not of the subset",
                "<style>.line{}</style> | line 3: <style> is not of the subset",
                "<line class='line' x1='1' y1='2' x2='3'/> | line 3: <line> has no y2",
                "<circle class='red' cx='1' cy='2' r='3'/> | line 3: <circle> has no class of the list",
                "<circle cx='1' cy='2' r='3'/> | line 3: <circle> has no class of the list",
                "<circle class='line' cx='1' cy='2' r='3' style='fill:red'/> | line 3: <circle> has an attribute style",
                "<circle class='line' cx='1' cy='2' r='3' transform='scale(2)'/> | has an attribute transform",
                "<circle class='line' cx='1' cy='2' r='3' onclick='x()'/> | has an attribute onclick",
                "<circle class='line' cx='1' cy='2' r='wide'/> | line 3: <circle>: 'wide' is not a number",
                "<circle class='line' cx='1' cy='2' r='3'><title>x</title></circle> | holds another element",
                "<path class='line' d='M0 0 T1 1'/> | line 3: <path>: path command T is not of the subset",
                "<g class='line'></g> | line 3: <g> has an attribute",
                "<g>words</g> | text outside the title",
                "<title>Again.</title> | <title> is not of the subset",
                "<!-- why --> | a comment, DOCTYPE or processing instruction",
                "<x:line xmlns:x='urn:x' class='line'/> | <line> of another namespace",
                "<line | not well-formed XML",
                "&nbsp; | not well-formed XML",
            })
    void namesWhatLeavesTheSubset(String element, String fault) {
        assertThatThrownBy(() -> read(ROOT + TITLE + element + LINE + "</svg>"))
                .isInstanceOf(OutsideSubset.class)
                .hasMessageStartingWith("rim--rolled.svg")
                .hasMessageContaining(fault)
                .message()
                .doesNotContain("\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "<svg xmlns='http://www.w3.org/2000/svg'/> | not an svg with a viewBox alone",
                "<svg viewBox='0 0 160 160'/> | not an svg with a viewBox alone",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 160'/> | not 0 0 width height",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='a b c d'/> | is not a number",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 160 160'/> | no title",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 160 160'><title>x</title></svg> | no shape",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 160 160'><title> </title></svg> | no title",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 160 160'><title>a<b/></title></svg> | more than text",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 160 160'><g/></svg> | <g> before a title",
                "<!DOCTYPE svg SYSTEM 'http://127.0.0.1/x.dtd'><svg/> | a comment, DOCTYPE or processing instruction",
                "PNG | not well-formed XML",
                "`` | not well-formed XML",
            })
    void namesAFileThatIsNoPicture(String file, String fault) {
        assertThatThrownBy(() -> read(file)).isInstanceOf(OutsideSubset.class).hasMessageContaining(fault);
    }

    /** Any bytes end in a picture or in the named error, never in another. */
    @Test
    void endsInAPictureOrTheNamedErrorWhateverTheBytes() throws IOException {
        byte[] good;
        try (InputStream in = Pictures.class.getResourceAsStream("/hornbook/catalogue/pictures/horn.svg")) {
            good = in.readAllBytes();
        }
        Random random = new Random(20);
        int refused = 0;
        for (int i = 0; i < 500; i++) {
            byte[] bad = good.clone();
            for (int k = 0; k < 1 + i % 3; k++) {
                bad[random.nextInt(bad.length)] = (byte) random.nextInt(256);
            }
            try {
                PictureReader.read("horn.svg", "horn", "", new ByteArrayInputStream(bad));
            } catch (OutsideSubset e) {
                refused++;
            }
        }
        assertThat(refused).isBetween(250, 499);
    }

    private static Picture read(String file) {
        return PictureReader.read(
                "rim--rolled.svg", "rim", "rolled", new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8)));
    }
}
