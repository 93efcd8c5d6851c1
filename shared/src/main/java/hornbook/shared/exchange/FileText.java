package hornbook.shared.exchange;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The text of a file that a person hands in. */
final class FileText {
    /** Past any shop's: a million ledger lines are 80 MB. */
    private static final long MOST_BYTES = 512L * 1024 * 1024;

    private FileText() {}

    /** Why a file's text cannot be had, and what to do. */
    static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1;

        Unreadable(String why) {
            super(why);
        }

        String why() {
            return String.valueOf(getMessage());
        }
    }

    static String utf8(Path file) throws Unreadable {
        try {
            return withoutMark(strictly(bytes(file), StandardCharsets.UTF_8));
        } catch (CharacterCodingException e) {
            throw new Unreadable("is not UTF-8 text: save it as CSV UTF-8");
        }
    }

    static byte[] bytes(Path file) throws Unreadable {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new Unreadable("is larger than 512 MB: split it");
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new Unreadable("cannot be read: check that it is a file, and its permissions");
        }
    }

    static String strictly(byte[] bytes, Charset charset) throws CharacterCodingException {
        return charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    }

    static String withoutMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }
}
