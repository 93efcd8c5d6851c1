package hornbook.shared.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Which way up a photo is, as Exif (JEITA CP-3451, tag 274) has it: 1 upright, 3, 6 and 8 turned, the rest mirrored. */
final class Orientation {
    static final int UPRIGHT = 1;

    private static final int TAG = 0x0112;
    private static final int SHORT = 3;

    /** "Exif" and two zeros stand before the TIFF header. */
    private static final int BEFORE = 6;

    private Orientation() {}

    /** The orientation an Exif segment tells, upright where it tells none that can be read. */
    static int read(byte[] exif) {
        ByteBuffer tiff = ByteBuffer.wrap(exif, BEFORE, exif.length - BEFORE).slice();
        if (tiff.remaining() < 8) {
            return UPRIGHT;
        }
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        long directory = tiff.getInt(4) & 0xFFFF_FFFFL;
        if (directory + 2 > tiff.capacity()) {
            return UPRIGHT;
        }
        int entries = tiff.getShort((int) directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            int entry = (int) directory + 2 + 12 * i;
            if (entry + 12 > tiff.capacity()) {
                return UPRIGHT;
            }
            if ((tiff.getShort(entry) & 0xFFFF) == TAG && tiff.getShort(entry + 2) == SHORT) {
                int told = tiff.getShort(entry + 8);
                return told >= 1 && told <= 8 ? told : UPRIGHT;
            }
        }
        return UPRIGHT;
    }

    /** A segment that says this and nothing else; empty for an upright picture. */
    static byte[] segment(int orientation) {
        if (orientation == UPRIGHT) {
            return new byte[0];
        }
        ByteBuffer out = ByteBuffer.allocate(36);
        out.putShort((short) 0xFFE1).putShort((short) 34).put(new byte[] {'E', 'x', 'i', 'f', 0, 0});
        out.put(new byte[] {'M', 'M', 0, 42}).putInt(8).putShort((short) 1);
        out.putShort((short) TAG).putShort((short) SHORT).putInt(1);
        out.putShort((short) orientation).putShort((short) 0).putInt(0);
        return out.array();
    }
}
