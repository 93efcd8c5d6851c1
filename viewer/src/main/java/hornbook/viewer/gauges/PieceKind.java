package hornbook.viewer.gauges;

import java.util.Locale;

/** A kind of part or supply that can be asked for. */
public record PieceKind(String id, String title) {
    /** Whether every word typed begins a word of its title. */
    boolean meantBy(String typed) {
        String words = " " + title.toLowerCase(Locale.ROOT).replace('-', ' ');
        for (String word : typed.toLowerCase(Locale.ROOT).strip().split("[ -]+")) {
            if (!words.contains(" " + word)) {
                return false;
            }
        }
        return true;
    }

    boolean named(String typed) {
        return id.equals(typed) || title.equalsIgnoreCase(typed.strip());
    }
}
