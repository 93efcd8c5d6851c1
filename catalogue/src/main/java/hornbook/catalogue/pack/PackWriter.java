package hornbook.catalogue.pack;

import hornbook.shared.shop.BadInput;
import hornbook.shared.store.SafeFiles;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes a pack: the same entries make the same bytes. Replaces an older zip file, and nothing else. */
final class PackWriter {
    private static final byte[] ZIP = {'P', 'K'};
    private static final LocalDateTime NO_DAY = LocalDateTime.of(1980, 1, 1, 0, 0);

    private PackWriter() {}

    static void write(Path file, Map<String, String> texts) {
        try {
            if (Files.exists(file) && !isZip(file)) {
                throw new BadInput(file + " is there already and is no pack: choose another name");
            }
            SafeFiles.replace(file, zipped(texts));
        } catch (IOException e) {
            throw new BadInput(file + " cannot be written: name a file in a folder that is there and may be written");
        }
    }

    private static byte[] zipped(Map<String, String> texts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (Map.Entry<String, String> text : texts.entrySet()) {
                ZipEntry entry = new ZipEntry(text.getKey());
                entry.setTimeLocal(NO_DAY);
                zip.putNextEntry(entry);
                zip.write(text.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static boolean isZip(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return Arrays.equals(in.readNBytes(ZIP.length), ZIP);
        }
    }
}
