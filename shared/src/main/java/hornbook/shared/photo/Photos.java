package hornbook.shared.photo;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Photo;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.shared.store.Books;
import hornbook.shared.store.SafeFiles;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** The photos of a shop. */
public final class Photos {
    private static final long MOST_BYTES = 100L << 20;

    private final Books books;
    private final Path folder;

    public Photos(Books books) {
        this.books = books;
        this.folder = books.folder().resolve("photos");
    }

    /** What a photo is of: a job, a horn, both or neither; the day it was taken where known; a word on it. */
    public record About(
            @Nullable String job,
            @Nullable String horn,
            @Nullable LocalDate taken,
            String word) {
        private String what() {
            return job != null ? job : horn != null ? horn : "the shop";
        }
    }

    /** A picture as kept: its SHA-256 in hexadecimal digits, and how its file ends. */
    public record Kept(String sha, String ending) {}

    /**
     * Takes a picture in, stripped of place, time, owner and thumbnail; which way up it is stays.
     *
     * @throws BadInput where it is no JPEG or PNG, or names a job or horn that is not there
     */
    public Photo add(Path picture, About about) {
        Kept kept = keep(picture);
        String[] id = {""};
        books.write("photo of " + about.what(), w -> {
            id[0] = w.nextId(Photo.class);
            w.put(new Photo(
                    id[0],
                    kept.sha(),
                    kept.ending(),
                    about.job(),
                    about.horn(),
                    about.taken(),
                    books.today(),
                    about.word()));
        });
        return books.find(Photo.class, id[0]).orElseThrow();
    }

    /** The picture's file. */
    public Path file(Photo photo) {
        return file(photo.sha() + "." + photo.kept());
    }

    /** The file of that name among the photos. */
    public Path file(String name) {
        return folder.resolve(name);
    }

    /** Which way up the photo of that name was held, as Exif numbers it (JEITA CP-3451, tag 274): 1 is upright. */
    public int orientation(String name) {
        try (InputStream in = Files.newInputStream(file(name))) {
            return Jpeg.orientation(in.readNBytes(Jpeg.HEAD));
        } catch (IOException e) {
            throw new ShopUnavailable("the photo " + name + " cannot be read: “hornbook check” tells what is wrong", e);
        }
    }

    /** Puts a picture among the photos without a record; the same picture twice is one file. */
    public Kept keep(Path picture) {
        Picture stripped = stripped(picture);
        Kept kept = kept(stripped);
        put(folder.resolve(kept.sha() + "." + kept.ending()), stripped.content());
        return kept;
    }

    /** What {@link #keep} would answer; nothing is written. */
    public Kept look(Path picture) {
        return kept(stripped(picture));
    }

    private static Kept kept(Picture picture) {
        return new Kept(sha(picture.content()), picture.ending());
    }

    private static Picture stripped(Path picture) {
        try {
            if (Files.size(picture) > MOST_BYTES) {
                throw new BadInput("is larger than 100 MB: save it smaller");
            }
            return Picture.stripped(Files.readAllBytes(picture));
        } catch (IOException e) {
            throw new BadInput("picture " + picture + " cannot be read: check that it is a file, and its permissions");
        } catch (BadInput e) {
            throw new BadInput("picture " + picture + " " + e.getMessage());
        }
    }

    private static void put(Path file, byte[] content) {
        try {
            Files.createDirectories(file.getParent());
            if (!Files.exists(file) || Files.size(file) != content.length) {
                SafeFiles.replace(file, content);
            }
        } catch (IOException e) {
            throw new ShopUnavailable(file + " cannot be written: make room or check its permissions", e);
        }
    }

    private static String sha(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }
}
