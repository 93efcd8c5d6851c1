package hornbook.shared.measure;

import java.util.List;
import java.util.regex.Pattern;

/** Brings the many signs people type to the few the readers know. */
final class Writing {
    private record Sign(Pattern typed, String known) {
        static Sign of(String typed, String known) {
            return new Sign(Pattern.compile(typed), known);
        }
    }

    private static final List<Sign> SIGNS = List.of(
            Sign.of("[\\u00A0\\u2007\\u2009\\u202F\\s]+", " "),
            Sign.of("[″”“]|''|′′|’’", "\""),
            Sign.of("[’′]", "'"),
            Sign.of("[⁄∕]", "/"),
            Sign.of("[−‐‑]", "-"),
            Sign.of("[×✕]", "x"),
            Sign.of("[µμ]", "u"),
            Sign.of("(?<=\\d) ?(?=[½¼¾⅛⅜⅝⅞])", " "),
            Sign.of("½", "1/2"),
            Sign.of("¼", "1/4"),
            Sign.of("¾", "3/4"),
            Sign.of("⅛", "1/8"),
            Sign.of("⅜", "3/8"),
            Sign.of("⅝", "5/8"),
            Sign.of("⅞", "7/8"));

    private Writing() {}

    /** Same text, plain signs, single spaces, no spaces at the ends; case is kept. */
    static String plain(String text) {
        if (alreadyPlain(text)) {
            return text.strip();
        }
        String plain = text;
        for (Sign sign : SIGNS) {
            plain = sign.typed().matcher(plain).replaceAll(sign.known());
        }
        return plain.strip();
    }

    private static boolean alreadyPlain(String text) {
        for (int at = 0; at < text.length(); at++) {
            char sign = text.charAt(at);
            boolean doubled = at > 0 && sign == text.charAt(at - 1) && (sign == ' ' || sign == '\'');
            if (sign < ' ' || sign > '~' || doubled) {
                return false;
            }
        }
        return true;
    }
}
