package hornbook.shared.photo;

import hornbook.shared.photo.Picture.Damaged;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import java.util.zip.CRC32;

/** Walks the chunks of a PNG (ISO/IEC 15948) and keeps those that draw it. */
final class Png {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    private static final Set<String> DRAW =
            Set.of("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT", "bKGD", "pHYs");

    private final byte[] given;

    Png(byte[] given) {
        this.given = given;
    }

    static boolean is(byte[] file) {
        return file.length > SIGNATURE.length
                && Arrays.equals(file, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length);
    }

    byte[] stripped() throws Damaged {
        ByteArrayOutputStream out = new ByteArrayOutputStream(given.length);
        out.writeBytes(SIGNATURE);
        boolean data = false;
        String type = "";
        for (int at = SIGNATURE.length; !type.equals("IEND"); ) {
            int length = length(at);
            String before = type;
            type = new String(given, at + 4, 4, StandardCharsets.ISO_8859_1);
            if (before.isEmpty() && !type.equals("IHDR")) {
                throw new Damaged("it does not begin with its header");
            }
            if (DRAW.contains(type)) {
                out.write(given, at, length + 12);
            }
            data |= type.equals("IDAT");
            at += length + 12;
        }
        if (!data) {
            throw new Damaged("there is no picture in it");
        }
        return out.toByteArray();
    }

    private int length(int at) throws Damaged {
        ByteBuffer bytes = ByteBuffer.wrap(given);
        if (at + 12 > given.length) {
            throw new Damaged("it breaks off");
        }
        int length = bytes.getInt(at);
        if (length < 0 || length > given.length - at - 12) {
            throw new Damaged("a part of it is longer than the file, at byte " + at);
        }
        CRC32 sum = new CRC32();
        sum.update(given, at + 4, length + 4);
        if ((int) sum.getValue() != bytes.getInt(at + 8 + length)) {
            throw new Damaged("the part at byte " + at + " does not agree with its check sum");
        }
        return length;
    }
}
