package hornbook.viewer.paper;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/**
 * Pages of one size. All lengths are true millimetres, from the upper left corner, y downward; type is in points.
 * Text is printed whatever signs it holds: one the type lacks becomes �.
 */
public final class Sheet implements AutoCloseable {
    private final PaperSize size;
    private final PDDocument document = new PDDocument();
    private final Typeface type;
    private @Nullable PDPageContentStream page;

    /** An empty document; its first page is still to be begun. */
    public Sheet(PaperSize size, String title) {
        this.size = size;
        type = new Typeface(document);
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(title);
        document.setDocumentInformation(about);
        document.getDocumentCatalog().setLanguage("en");
        // A dialogue that fits pages to the paper would make every length untrue.
        PDViewerPreferences asIs = new PDViewerPreferences(new COSDictionary());
        asIs.setPrintScaling(PRINT_SCALING.None);
        document.getDocumentCatalog().setViewerPreferences(asIs);
    }

    public PaperSize size() {
        return size;
    }

    /** How many pages were begun. */
    public int pages() {
        return document.getNumberOfPages();
    }

    /** Begins the next page. */
    public void page() {
        try {
            endPage();
            float width = (float) (size.width() / Typeface.POINT);
            float height = (float) (size.height() / Typeface.POINT);
            PDPage next = new PDPage(new PDRectangle(width, height));
            document.addPage(next);
            PDPageContentStream begun = new PDPageContentStream(document, next);
            float scale = (float) (1 / Typeface.POINT);
            begun.transform(new Matrix(scale, 0, 0, -scale, 0, height));
            page = begun;
        } catch (IOException unwritten) {
            throw new UncheckedIOException(unwritten);
        }
    }

    /** One line of text, its foot line at y. */
    public void text(String text, double x, double y, double points, double grey) {
        text(text, Face.SIGNS, x, y, points, grey);
    }

    public void text(String text, Face face, double x, double y, double points, double grey) {
        List<Typeface.Run> runs = type.runs(type.printable(text), face);
        put(on -> {
            on.setNonStrokingColor((float) grey);
            on.beginText();
            on.setTextMatrix(new Matrix(1, 0, 0, -1, (float) x, (float) y));
            for (Typeface.Run run : runs) {
                on.setFont(run.cut().font(), (float) (points * Typeface.POINT));
                on.showText(run.text());
            }
            on.endText();
        });
    }

    /** How wide a line of text is. */
    public double width(String text, double points) {
        return width(text, Face.SIGNS, points);
    }

    public double width(String text, Face face, double points) {
        return type.width(type.printable(text), face, points);
    }

    /** The lines a text makes in a width, the last with an ellipsis where more than {@code most} would be needed. */
    public List<String> lines(String text, double points, double width, int most) {
        return breaking(points, width).first(most, type.printable(text));
    }

    public Lines breaking(double points, double width) {
        return new Lines(width, line -> width(line, points));
    }

    /** A straight line. */
    public void line(double x1, double y1, double x2, double y2, double width) {
        draw(new Line2D.Double(x1, y1, x2, y2), Ink.line(width, 0));
    }

    public void draw(Shape outline, Ink ink) {
        put(on -> Pencil.draw(on, outline, ink));
    }

    /** Writes the pages. @throws hornbook.shared.shop.BadInput where the file cannot be written, or is there and is no PDF */
    public void save(Path file) {
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            endPage();
            document.save(bytes);
            PdfFile.write(file, bytes.toByteArray());
        } catch (IOException unwritten) {
            throw new UncheckedIOException(unwritten);
        }
    }

    @Override
    public void close() {
        try (document;
                type) {
            endPage();
        } catch (IOException unwritten) {
            throw new UncheckedIOException(unwritten);
        }
    }

    private void endPage() throws IOException {
        if (page != null) {
            page.close();
            page = null;
        }
    }

    private void put(Mark mark) {
        if (page == null) {
            throw new IllegalStateException("no page was begun");
        }
        try {
            mark.on(page);
        } catch (IOException unwritten) {
            throw new UncheckedIOException(unwritten);
        }
    }

    private interface Mark {
        void on(PDPageContentStream page) throws IOException;
    }
}
