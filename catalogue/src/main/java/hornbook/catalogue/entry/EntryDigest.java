package hornbook.catalogue.entry;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Tells, without reading any entry, whether the entries are still the same: what is made of them can be kept if so. */
public final class EntryDigest {
    private EntryDigest() {}

    /**
     * SHA-256, hex, over path and content of the shipped files and of the shop's own.
     *
     * @param folder the shop's folder of entries; it may be missing
     */
    public static String of(Path folder) {
        Digest digest = new Digest();
        try {
            for (Kind kind : Kind.values()) {
                shipped(kind, digest);
            }
            for (Kind kind : Kind.values()) {
                for (Path file : own(folder.resolve(kind.word()))) {
                    digest.add(kind.word() + "/" + file.getFileName(), Files.readAllBytes(file));
                }
            }
            return digest.hex();
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read the entries in " + folder, e);
        }
    }

    private static void shipped(Kind kind, Digest digest) throws IOException {
        try (InputStream in = EntryDigest.class.getResourceAsStream(Shelf.SHIPPED + kind.word() + ".json")) {
            if (in != null) {
                digest.add("shipped/" + kind.word(), in.readAllBytes());
            }
        }
    }

    private static List<Path> own(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }
}
