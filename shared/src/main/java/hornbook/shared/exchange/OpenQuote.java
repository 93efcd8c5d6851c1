package hornbook.shared.exchange;

/** Finds the quotation mark that was opened and never closed: a lenient reader takes the rest of the file for a cell. */
final class OpenQuote {
    private OpenQuote() {}

    /** Is a quoted cell still open where the text ends? Looks from the line on which the last record begins. */
    static boolean atEnd(String text, long lastRecordLine, char separator) {
        boolean quoted = false;
        boolean cellBegins = true;
        for (int i = begin(text, lastRecordLine); i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' && (quoted || cellBegins)) {
                quoted = !quoted;
                // A doubled mark within a quoted cell closes and opens it again.
                cellBegins = !quoted;
            } else if (!quoted) {
                cellBegins = c == separator || c == '\n' || c == '\r';
            }
        }
        return quoted;
    }

    /** Lines end with LF, CR or CR LF, as the reader of the records counts them. */
    private static int begin(String text, long line) {
        int at = 0;
        for (long passed = 1; passed < line && at < text.length(); at++) {
            char c = text.charAt(at);
            boolean half = c == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
            if (c == '\n' || c == '\r' && !half) {
                passed++;
            }
        }
        return at;
    }
}
