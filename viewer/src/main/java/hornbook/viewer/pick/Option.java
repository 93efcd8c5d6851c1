package hornbook.viewer.pick;

import java.util.Arrays;
import java.util.Locale;

/**
 * One of many.
 *
 * @param value what is told of it once chosen
 * @param words what a person reads
 * @param note what else is to be said; may be empty
 */
public record Option(String value, String words, String note) {
    boolean has(String typed) {
        String all = (words + " " + note + " " + value).toLowerCase(Locale.ROOT);
        return Arrays.stream(typed.toLowerCase(Locale.ROOT).strip().split("\\s+"))
                .allMatch(all::contains);
    }
}
