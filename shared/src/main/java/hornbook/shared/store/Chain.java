package hornbook.shared.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import org.jspecify.annotations.Nullable;

/** The chain over all deeds: each link is SHA-256 of the link before, the deed, and its feed lines in order. */
final class Chain {
    private final MessageDigest digest = Sums.sha256();

    Chain(byte @Nullable [] before, long deed, String title, String day, @Nullable Long undoOf) {
        if (before != null) {
            digest.update(before);
        }
        digest.update(Sums.joined(deed, title, day, undoOf).getBytes(StandardCharsets.UTF_8));
    }

    /** Adds a feed line: the record, the row as it was, and the sums before and after. */
    void add(long seq, String kind, String id, @Nullable String before, long was, long after) {
        add(Sums.joined(seq, kind, id, before).getBytes(StandardCharsets.UTF_8), was, after);
    }

    void add(byte[] line, long was, long after) {
        digest.update(line);
        digest.update(ByteBuffer.allocate(16).putLong(was).putLong(after).array());
    }

    byte[] link() {
        return digest.digest();
    }
}
