package hornbook.catalogue.pack;

import hornbook.catalogue.entry.Kind;
import hornbook.shared.shop.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Reads a pack, from whomever: nothing is unpacked onto the disk, and sizes are bounded while reading. */
final class PackFile {
    /** Names in a pack. */
    static final String ENTRIES = "entries/";

    private static final Pattern NAME =
            Pattern.compile("entries/([a-z-]{1,20})/([A-Za-z0-9][A-Za-z0-9.-]{0,120})\\.json");
    private static final Pattern NOT_SHOWN = Pattern.compile("[^\\p{L}\\p{N}\\p{P}\\p{S} ]");
    private static final int LONGEST_SHOWN = 80;
    private static final int MOST_ENTRIES = 20_000;
    private static final int LARGEST = 4_000_000;
    private static final long LARGEST_SUM = 100_000_000;

    private final String name;

    private PackFile(String name) {
        this.name = name;
    }

    /** An entry as it stands in the pack. */
    record Inside(Kind kind, String id, String text) {}

    /** All of them, in order of name. @throws BadInput for anything that is no pack; one line, naming what */
    static List<Inside> read(Path file) {
        return new PackFile(String.valueOf(file.getFileName())).all(file);
    }

    private List<Inside> all(Path file) {
        try (ZipFile zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8)) {
            if (zip.size() > MOST_ENTRIES) {
                throw refused("", "holds " + zip.size() + " files, more than a pack can");
            }
            List<Inside> inside = new ArrayList<>();
            Set<String> names = new HashSet<>();
            long sum = 0;
            for (ZipEntry entry : zip.stream().toList()) {
                if (!names.add(entry.getName())) {
                    throw refused(entry.getName(), "stands in it twice");
                }
                byte[] content = content(zip, entry);
                sum += content.length;
                if (sum > LARGEST_SUM) {
                    throw refused("", "is larger unpacked than a pack can be");
                }
                inside.add(inside(entry.getName(), content));
            }
            return inside;
        } catch (IOException | IllegalArgumentException e) {
            throw new BadInput(name + " is no pack that can be read: ask for it again; nothing was taken");
        }
    }

    private Inside inside(String path, byte[] content) {
        Matcher parts = NAME.matcher(path);
        if (!parts.matches()) {
            throw refused(path, "is no name of an entry, as entries/quirk/q-some-quirk.json");
        }
        Kind kind = Kind.named(parts.group(1)).orElseThrow(() -> refused(path, "is of no kind of entry there is"));
        try {
            return new Inside(
                    kind,
                    parts.group(2),
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .decode(ByteBuffer.wrap(content))
                            .toString());
        } catch (CharacterCodingException e) {
            throw refused(path, "is not UTF-8 text");
        }
    }

    private byte[] content(ZipFile zip, ZipEntry entry) throws IOException {
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] content = in.readNBytes(LARGEST + 1);
            if (content.length > LARGEST) {
                throw refused(entry.getName(), "is larger than an entry can be");
            }
            return content;
        }
    }

    /** One line; what strangers wrote is shown without signs that a terminal would obey. */
    BadInput refused(String path, String why) {
        return new BadInput(name + (path.isEmpty() ? "" : ", " + shown(path)) + ": " + why
                + "; nothing was taken: ask for another pack");
    }

    static String shown(String text) {
        String plain = NOT_SHOWN.matcher(text).replaceAll("\uFFFD");
        return plain.length() <= LONGEST_SHOWN ? plain : plain.substring(0, LONGEST_SHOWN) + "…";
    }
}
