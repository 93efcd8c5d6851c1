package hornbook.viewer.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The bundled type in one document; only the signs used are embedded. */
final class Typeface implements AutoCloseable {
    static final double POINT = 25.4 / 72;

    private static final String FILE = "/hornbook/viewer/window/fonts/DejaVuSans.ttf";
    private static final int REPLACEMENT = 0xFFFD;
    private static final double GLYPH_UNITS = 1000;

    private final TrueTypeFont file;
    private final CmapLookup glyphs;
    private final PDFont font;

    Typeface(PDDocument document) throws IOException {
        try (InputStream in = Typeface.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the type to print with is not in the program");
            }
            file = new TTFParser().parse(new RandomAccessReadBuffer(in));
        }
        glyphs = file.getUnicodeCmapLookup();
        font = PDType0Font.load(document, file, true);
    }

    PDFont font() {
        return font;
    }

    /** The text with what cannot be printed replaced: a break by a space, a sign the type lacks by �. */
    String printable(String text) {
        StringBuilder printable = new StringBuilder();
        text.codePoints().map(this::printable).forEach(printable::appendCodePoint);
        return printable.toString();
    }

    private int printable(int sign) {
        if (Character.isWhitespace(sign) || Character.isISOControl(sign)) {
            return ' ';
        }
        return glyphs.getGlyphId(sign) == 0 ? REPLACEMENT : sign;
    }

    /** Width in millimetres of printable text. */
    double width(String printable, double points) {
        try {
            return font.getStringWidth(printable) / GLYPH_UNITS * points * POINT;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
