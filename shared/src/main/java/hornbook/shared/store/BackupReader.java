package hornbook.shared.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Reads a backup, believing nothing in it: paths, lengths and sums must be those of its manifest, and no others. */
final class BackupReader {
    private static final JsonMapper JSON = new JsonMapper();

    /** A hundred thousand photos' lines fit. */
    private static final int MOST_MANIFEST = 32 << 20;

    private final Path zip;

    BackupReader(Path zip) {
        this.zip = zip;
    }

    /** Why a file cannot be restored from. */
    static final class Unfit extends Exception {
        private static final long serialVersionUID = 1;

        Unfit(String why) {
            super(why);
        }

        String why() {
            return String.valueOf(getMessage());
        }
    }

    /** Reads all of it and keeps nothing. */
    Manifest verify() throws Unfit {
        return read(path -> OutputStream.nullOutputStream());
    }

    /** Unpacks into an empty folder. */
    Manifest unpack(Path into) throws Unfit {
        return read(path -> {
            Path file = into.resolve(path);
            Files.createDirectories(file.getParent());
            return Files.newOutputStream(file);
        });
    }

    private interface Target {
        OutputStream open(String path) throws IOException;
    }

    private Manifest read(Target target) throws Unfit {
        try (ZipFile file = new ZipFile(zip.toFile())) {
            Manifest manifest = manifest(file);
            refuseStrangers(file, manifest);
            for (Manifest.Part part : manifest.files()) {
                read(file, part, target);
            }
            return manifest;
        } catch (IOException e) {
            throw new Unfit("cannot be read as a backup, or there is no room to unpack it");
        }
    }

    private static Manifest manifest(ZipFile file) throws IOException, Unfit {
        ZipEntry entry = file.getEntry(Manifest.NAME);
        if (entry == null) {
            throw new Unfit("has no manifest: it is no backup of Hornbook, or was cut off");
        }
        try (InputStream in = file.getInputStream(entry)) {
            Manifest manifest = JSON.readValue(in.readNBytes(MOST_MANIFEST), Manifest.class);
            if (manifest == null || !Manifest.HOLDS.equals(manifest.holds()) || manifest.files() == null) {
                throw new Unfit("is no backup of Hornbook");
            }
            if (manifest.shape() > Migrations.SHAPE) {
                throw new Unfit("was made by a newer Hornbook: use that one");
            }
            return manifest;
        } catch (JacksonException e) {
            throw new Unfit("has a manifest that cannot be read");
        }
    }

    private static void refuseStrangers(ZipFile file, Manifest manifest) throws Unfit {
        Set<String> told = new HashSet<>(Set.of(Manifest.NAME));
        for (Manifest.Part part : manifest.files()) {
            if (part == null || part.path() == null || part.sha256() == null || !part.allowed()) {
                throw new Unfit("names a file that no shop has: " + (part == null ? "" : part.path()));
            }
            if (!told.add(part.path())) {
                throw new Unfit("holds " + part.path() + " twice");
            }
        }
        if (!told.contains(Opening.FILE)) {
            throw new Unfit("holds no books");
        }
        var stranger = file.stream()
                .map(ZipEntry::getName)
                .filter(n -> !told.contains(n))
                .findFirst();
        if (stranger.isPresent() || file.size() != told.size()) {
            throw new Unfit("holds a file that its manifest does not name: " + stranger.orElse("one of them twice"));
        }
    }

    private static void read(ZipFile file, Manifest.Part part, Target target) throws IOException, Unfit {
        ZipEntry entry = file.getEntry(part.path());
        if (entry == null) {
            throw new Unfit("lacks " + part.path());
        }
        MessageDigest digest = Sums.sha256();
        long size;
        try (InputStream in = file.getInputStream(entry);
                OutputStream out = new DigestOutputStream(target.open(part.path()), digest)) {
            size = copy(in, out, part.size());
        }
        if (size != part.size() || !HexFormat.of().formatHex(digest.digest()).equals(part.sha256())) {
            throw new Unfit("is damaged: " + part.path() + " is not what was put in");
        }
    }

    /** Stops one byte past what the manifest tells, however much more the file would unpack to. */
    private static long copy(InputStream in, OutputStream out, long most) throws IOException {
        byte[] buffer = new byte[1 << 16];
        long size = 0;
        for (int n = in.read(buffer); n >= 0 && size <= most; n = in.read(buffer)) {
            out.write(buffer, 0, n);
            size += n;
        }
        return size;
    }
}
