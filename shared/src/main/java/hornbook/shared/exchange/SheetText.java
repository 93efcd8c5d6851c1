package hornbook.shared.exchange;

import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** A spreadsheet's text however it was saved: UTF-8, UTF-16 with its mark, or Windows-1252; by comma, semicolon or tab. */
record SheetText(String text, char separator, String encoding) {
    private static final Charset WINDOWS = Charset.forName("windows-1252");

    static SheetText read(Path file, List<String> remarks) throws FileText.Unreadable {
        Decoded decoded = decoded(FileText.bytes(file), remarks);
        SheetTop top = SheetTop.of(FileText.withoutMark(decoded.text()));
        if (top.passedOver() > 0) {
            remarks.add("the first " + (top.passedOver() == 1 ? "row was" : top.passedOver() + " rows were")
                    + " passed over: the headings stand below");
        }
        return new SheetText(top.text(), top.separator(), decoded.encoding());
    }

    private record Decoded(String text, String encoding) {}

    private static Decoded decoded(byte[] bytes, List<String> remarks) throws FileText.Unreadable {
        try {
            if (bytes.length > 1 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFE + 0xFF && (bytes[0] & 0xFF) >= 0xFE) {
                return new Decoded(FileText.strictly(bytes, StandardCharsets.UTF_16), "UTF-16");
            }
            return new Decoded(FileText.strictly(bytes, StandardCharsets.UTF_8), "UTF-8");
        } catch (CharacterCodingException e) {
            remarks.add("the text is not UTF-8 and was read as Windows-1252: look whether its accents are right");
            return new Decoded(new String(bytes, Objects.requireNonNull(WINDOWS)), "Windows-1252");
        }
    }
}
