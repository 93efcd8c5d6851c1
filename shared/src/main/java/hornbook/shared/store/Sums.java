package hornbook.shared.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Sums over what is kept, to notice when it changed by itself: the first 64 bits of SHA-256. For one thread. */
final class Sums {
    /** Between cells: the unit separator of ASCII, which no one types. */
    static final char BETWEEN = '\u001f';

    private final MessageDigest digest = sha256();

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }

    long of(byte[] content) {
        return ByteBuffer.wrap(digest.digest(content)).getLong();
    }

    long of(String content) {
        return of(content.getBytes(StandardCharsets.UTF_8));
    }

    long of(@Nullable Object... parts) {
        return of(joined(parts));
    }

    /** A stored row: its cells as the table keeps them, and whether it is retired. */
    long row(List<String> cells, boolean retired) {
        return of(String.join(String.valueOf(BETWEEN), cells) + BETWEEN + (retired ? '1' : '0'));
    }

    static String joined(@Nullable Object... parts) {
        StringBuilder text = new StringBuilder();
        for (Object part : parts) {
            if (!text.isEmpty()) {
                text.append(BETWEEN);
            }
            text.append(Objects.toString(part, ""));
        }
        return text.toString();
    }
}
