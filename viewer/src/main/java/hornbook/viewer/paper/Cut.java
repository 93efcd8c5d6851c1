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

/** One face in one document; only the signs used are embedded. */
final class Cut implements AutoCloseable {
    private static final double GLYPH_UNITS = 1000;

    private final TrueTypeFont file;
    private final CmapLookup glyphs;
    private final PDFont font;

    Cut(PDDocument document, Face face) throws IOException {
        try (InputStream in = Cut.class.getResourceAsStream(face.resource())) {
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

    boolean has(int sign) {
        return glyphs.getGlyphId(sign) != 0;
    }

    /** Width in millimetres of text whose signs it has, at one point. */
    double width(String text) {
        try {
            return font.getStringWidth(text) / GLYPH_UNITS * Typeface.POINT;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
