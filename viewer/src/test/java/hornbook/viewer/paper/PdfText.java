package hornbook.viewer.paper;

import java.nio.file.Path;

/** The words of a PDF, for tests of what prints one. */
public final class PdfText {
    private PdfText() {}

    /** Its words in reading order, one space between. */
    public static String of(Path file) {
        return Rendered.text(file).replaceAll("\\s+", " ");
    }
}
