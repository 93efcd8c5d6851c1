package hornbook.viewer.paper;

import hornbook.shared.shop.BadInput;
import hornbook.shared.store.SafeFiles;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** The file a person named for the pages. Replaces an older PDF, and nothing else; never holds half of them. */
final class PdfFile {
    private static final byte[] BEGINNING = "%PDF".getBytes(StandardCharsets.US_ASCII);

    private PdfFile() {}

    static void write(Path file, byte[] pages) {
        try {
            if (Files.exists(file) && !isPdf(file)) {
                throw new BadInput(file + " is there already and is no PDF: choose another name");
            }
            SafeFiles.replace(file, pages);
        } catch (IOException unwritten) {
            throw new BadInput(file + " cannot be written: name a file in a folder that is there and may be written");
        }
    }

    private static boolean isPdf(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] first = in.readNBytes(BEGINNING.length);
            return first.length == 0 || Arrays.equals(first, BEGINNING);
        }
    }
}
