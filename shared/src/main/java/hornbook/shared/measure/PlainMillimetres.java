package hornbook.shared.measure;

import java.util.Optional;

/** The writing nine sizes in ten have, {@code 10.4 mm}, taken without patterns; all others go the long way. */
final class PlainMillimetres {
    private static final int WHOLE_DIGITS = 5;
    private static final int DECIMALS = 6;

    private PlainMillimetres() {}

    /** A plain number of millimetres at this place; empty if it is anything else or more than that. */
    static Optional<SizeMention> at(String text, int start) {
        int point = digits(text, start);
        int end = point;
        if (point < text.length() - 1 && (text.charAt(point) == '.' || text.charAt(point) == ',')) {
            end = digits(text, point + 1);
        }
        int decimals = Math.max(0, end - point - 1);
        int unit = end < text.length() && text.charAt(end) == ' ' ? end + 1 : end;
        boolean plain = point > start
                && point - start <= WHOLE_DIGITS
                && (end == point || decimals > 0)
                && decimals <= DECIMALS
                && text.regionMatches(true, unit, "mm", 0, 2)
                && SizeStart.endsAt(text, unit + 2)
                && !goesOn(text, unit + 2);
        return plain ? Optional.of(mention(text, start, point, end, unit + 2)) : Optional.empty();
    }

    private static SizeMention mention(String text, int start, int point, int end, int after) {
        long nanometres = 0;
        for (int at = start; at < end; at++) {
            nanometres = at == point ? nanometres : 10 * nanometres + text.charAt(at) - '0';
        }
        for (int place = Math.max(0, end - point - 1); place < DECIMALS; place++) {
            nanometres *= 10;
        }
        Size size = new Size.Plain(Measured.single(new Length(nanometres)));
        return new SizeMention(start, after, text.substring(start, after), size);
    }

    private static int digits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }

    /** Whether a doubt or the other end of a range follows. */
    private static boolean goesOn(String text, int after) {
        int at = after < text.length() && text.charAt(after) == ' ' ? after + 1 : after;
        return at < text.length() && ("±+…–-".indexOf(text.charAt(at)) >= 0 || text.startsWith("..", at));
    }
}
