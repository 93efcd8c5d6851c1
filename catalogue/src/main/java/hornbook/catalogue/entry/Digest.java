package hornbook.catalogue.entry;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** One SHA-256 over many files: path and content of each, lengths before them so that none can run into the next. */
final class Digest {
    private final MessageDigest sha = sha256();

    void add(String path, byte[] content) {
        part(path.getBytes(StandardCharsets.UTF_8));
        part(content);
    }

    /** The digest as hex; nothing can be added after. */
    String hex() {
        return HexFormat.of().formatHex(sha.digest());
    }

    private void part(byte[] bytes) {
        sha.update(ByteBuffer.allocate(Long.BYTES).putLong(bytes.length).flip());
        sha.update(bytes);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
