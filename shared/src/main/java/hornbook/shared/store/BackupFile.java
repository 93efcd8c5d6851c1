package hornbook.shared.store;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import tools.jackson.databind.json.JsonMapper;

/** The file of a backup: a zip of the books, the entries, the photos, and the manifest at its end. */
final class BackupFile {
    private static final JsonMapper JSON = new JsonMapper();

    private final Path folder;

    BackupFile(Path folder) {
        this.folder = folder;
    }

    /** Writes the file and waits until the disk has it; answers the number of files in it. */
    int write(Path books, LocalDate day, Path zip) throws IOException {
        List<Manifest.Part> parts = new ArrayList<>();
        try (FileChannel channel = FileChannel.open(
                        zip,
                        StandardOpenOption.CREATE,
                        StandardOpenOption.TRUNCATE_EXISTING,
                        StandardOpenOption.WRITE);
                ZipOutputStream out = zip(channel)) {
            parts.add(add(out, Opening.FILE, books));
            for (Path file : others()) {
                parts.add(add(out, folder.relativize(file).toString().replace('\\', '/'), file));
            }
            out.putNextEntry(new ZipEntry(Manifest.NAME));
            Manifest manifest = new Manifest(Manifest.HOLDS, Migrations.SHAPE, day.toString(), parts);
            out.write(JSON.writeValueAsString(manifest).getBytes(StandardCharsets.UTF_8));
            out.closeEntry();
            out.finish();
            out.flush();
            channel.force(true);
        }
        return parts.size();
    }

    /** Not squeezed: that takes ten times as long as the copy itself. */
    private static ZipOutputStream zip(FileChannel channel) {
        OutputStream buffered = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16);
        ZipOutputStream out = new ZipOutputStream(buffered);
        out.setLevel(Deflater.NO_COMPRESSION);
        return out;
    }

    private List<Path> others() throws IOException {
        List<Path> found = new ArrayList<>();
        for (String below : List.of(Opening.ENTRIES, PhotoCheck.FOLDER)) {
            if (Files.isDirectory(folder.resolve(below))) {
                try (Stream<Path> files = Files.walk(folder.resolve(below), 2)) {
                    files.filter(Files::isRegularFile)
                            .filter(f -> new Manifest.Part(
                                            folder.relativize(f).toString().replace('\\', '/'), 0, "")
                                    .allowed())
                            .sorted()
                            .forEach(found::add);
                }
            }
        }
        return found;
    }

    private static Manifest.Part add(ZipOutputStream out, String path, Path file) throws IOException {
        MessageDigest digest = Sums.sha256();
        out.putNextEntry(new ZipEntry(path));
        long size;
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            size = copy(in, out);
        }
        out.closeEntry();
        return new Manifest.Part(path, size, HexFormat.of().formatHex(digest.digest()));
    }

    private static long copy(InputStream in, OutputStream out) throws IOException {
        byte[] buffer = new byte[1 << 18];
        long size = 0;
        for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
            out.write(buffer, 0, n);
            size += n;
        }
        return size;
    }

    /** Is every file of the manifest there, and what it was? */
    static boolean whole(Path zip) {
        try {
            new BackupReader(zip).verify();
            return true;
        } catch (BackupReader.Unfit e) {
            return false;
        }
    }
}
