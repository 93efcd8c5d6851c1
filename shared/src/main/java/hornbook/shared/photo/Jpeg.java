package hornbook.shared.photo;

import hornbook.shared.photo.Picture.Damaged;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Walks the segments of a JPEG (ITU-T T.81, annex B) and keeps those that draw it, and which way up it is. */
final class Jpeg {
    /** So many bytes tell all that is kept before the picture itself, but for its colour profile. */
    static final int HEAD = 4096;

    private static final int SOI = 0xD8;
    private static final int EOI = 0xD9;
    private static final int SOS = 0xDA;
    private static final int APP0 = 0xE0;
    private static final int APP1 = 0xE1;
    private static final int APP2 = 0xE2;
    private static final int APP14 = 0xEE;
    private static final int COM = 0xFE;

    /** JFIF's header up to its thumbnail. */
    private static final int JFIF = 12;

    private final byte[] given;
    private final ByteArrayOutputStream rest = new ByteArrayOutputStream();
    private byte[] header = {};
    private int orientation = Orientation.UPRIGHT;
    private boolean frame;
    private boolean scan;
    private int at = 2;

    Jpeg(byte[] given) {
        this.given = given;
    }

    static boolean is(byte[] file) {
        return file.length > 3 && at(file, 0) == 0xFF && at(file, 1) == SOI && at(file, 2) == 0xFF;
    }

    private static int at(byte[] bytes, int i) {
        return bytes[i] & 0xFF;
    }

    /** What lies behind the end of the picture goes too: cameras put second pictures and films there. */
    byte[] stripped() throws Damaged {
        for (int marker = marker(); marker != EOI; marker = marker()) {
            if (marker == 0x01 || marker >= 0xD0 && marker <= 0xD7) {
                continue;
            }
            segment(marker);
        }
        if (!frame || !scan) {
            throw new Damaged("there is no picture in it");
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream(given.length);
        out.write(0xFF);
        out.write(SOI);
        out.writeBytes(header);
        out.writeBytes(Orientation.segment(orientation));
        out.writeBytes(rest.toByteArray());
        out.write(0xFF);
        out.write(EOI);
        return out.toByteArray();
    }

    /** Which way up a picture kept here was held, by its first bytes. */
    static int orientation(byte[] head) {
        int at = 2;
        while (is(head) && at + 4 <= head.length && at(head, at) == 0xFF && at(head, at + 1) != SOS) {
            int length = at(head, at + 2) << 8 | at(head, at + 3);
            int end = Math.min(head.length, at + 2 + length);
            byte[] body = Arrays.copyOfRange(head, Math.min(at + 4, end), end);
            if (at(head, at + 1) == APP1 && begins(body, "Exif\0\0")) {
                return Orientation.read(body);
            }
            at += 2 + length;
        }
        return Orientation.UPRIGHT;
    }

    private int marker() throws Damaged {
        if (at >= given.length || at(given, at) != 0xFF) {
            throw new Damaged("it breaks off or holds something strange at byte " + at);
        }
        while (at < given.length && at(given, at) == 0xFF) {
            at++;
        }
        if (at >= given.length) {
            throw new Damaged("it breaks off");
        }
        return at(given, at++);
    }

    private void segment(int marker) throws Damaged {
        int length = at + 2 <= given.length ? at(given, at) << 8 | at(given, at + 1) : 0;
        if (length < 2 || at + length > given.length) {
            throw new Damaged("a part of it is longer than the file, at byte " + at);
        }
        byte[] body = Arrays.copyOfRange(given, at + 2, at + length);
        at += length;
        switch (marker) {
            case APP0 -> jfif(body);
            case APP1 -> orientation = begins(body, "Exif\0\0") ? Orientation.read(body) : orientation;
            case APP2 -> keepIf(begins(body, "ICC_PROFILE\0"), marker, body);
            case APP14 -> keepIf(begins(body, "Adobe"), marker, body);
            case SOS -> scan(body);
            default -> other(marker, body);
        }
    }

    private void other(int marker, byte[] body) {
        boolean talk = marker >= APP0 && marker <= 0xEF || marker == COM;
        frame |= marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
        keepIf(!talk, marker, body);
    }

    private void jfif(byte[] body) {
        if (begins(body, "JFIF\0") && body.length >= JFIF && header.length == 0) {
            byte[] bare = Arrays.copyOf(body, JFIF + 2);
            bare[JFIF] = 0;
            bare[JFIF + 1] = 0;
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            write(out, APP0, bare);
            header = out.toByteArray();
        }
    }

    /** A scan's data runs to the next marker that is neither a stuffed zero nor a restart. */
    private void scan(byte[] body) throws Damaged {
        keepIf(true, SOS, body);
        int begin = at;
        while (at + 1 < given.length && !(at(given, at) == 0xFF && ends(at(given, at + 1)))) {
            at++;
        }
        if (at + 1 >= given.length) {
            throw new Damaged("it breaks off before its end");
        }
        rest.write(given, begin, at - begin);
        scan = true;
    }

    private static boolean ends(int next) {
        return next != 0 && next != 0xFF && !(next >= 0xD0 && next <= 0xD7);
    }

    private void keepIf(boolean keep, int marker, byte[] body) {
        if (keep) {
            write(rest, marker, body);
        }
    }

    private static void write(ByteArrayOutputStream out, int marker, byte[] body) {
        out.write(0xFF);
        out.write(marker);
        out.write(body.length + 2 >> 8);
        out.write(body.length + 2);
        out.writeBytes(body);
    }

    private static boolean begins(byte[] body, String with) {
        byte[] text = with.getBytes(StandardCharsets.ISO_8859_1);
        return body.length >= text.length && Arrays.equals(body, 0, text.length, text, 0, text.length);
    }
}
