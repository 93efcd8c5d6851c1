package hornbook.viewer.drawers;

import java.util.Locale;

/** How notes from the books are set as sentences. */
final class Words {
    private Words() {}

    /** With a capital and a full stop; nothing stays nothing. */
    static String sentence(String words) {
        if (words.isBlank()) {
            return "";
        }
        String capital = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        return capital.endsWith(".") ? capital : capital + ".";
    }
}
