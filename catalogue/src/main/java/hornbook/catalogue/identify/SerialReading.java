package hornbook.catalogue.identify;

import hornbook.shared.shop.BadInput;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A serial number as read off a horn: letters before or after, digits, and a {@code ?} for each digit that cannot be
 * made out.
 *
 * @param letters before and after together, capitals
 * @param digits digits and {@code ?}
 */
record SerialReading(String letters, String digits) {
    private static final Pattern FORM = Pattern.compile("([A-Z]*)([0-9?]{1,12})([A-Z]*)");

    /** Digits that worn ones are taken for (common practice: 0 6 8 9, 1 7, 3 5 8). */
    private static final int[] CONFUSED = {3, 1, 0, 2, 0, 2, 3, 1, 5, 3};

    private static final double ALL = 10 + Arrays.stream(CONFUSED).sum();

    /**
     * Reads one.
     *
     * @throws BadInput where it is no number
     */
    static SerialReading of(String text) {
        Matcher form = FORM.matcher(text.toUpperCase(Locale.ROOT).replaceAll("[\\s.,/#№-]", ""));
        if (!form.matches()) {
            throw new BadInput("serial “" + text + "”: digits were expected, with letters before or after them and ?"
                    + " for a digit that cannot be read");
        }
        return new SerialReading(form.group(1) + form.group(3), form.group(2));
    }

    /** Is there a number in it at all? */
    boolean told() {
        return !digits.replace("?", "").isEmpty();
    }

    /** Share of the readings, usual misreads heavier, that are at most this number. */
    double upTo(long number) {
        String limit = Long.toString(number);
        if (number < 0) {
            return 0;
        }
        if (limit.length() > digits.length()) {
            return 1;
        }
        limit = "0".repeat(digits.length() - limit.length()) + limit;
        double equal = 1;
        double below = 0;
        for (int i = 0; i < digits.length(); i++) {
            int at = limit.charAt(i) - '0';
            for (int d = 0; d < at; d++) {
                below += equal * weight(digits.charAt(i), d);
            }
            equal *= weight(digits.charAt(i), at);
        }
        return below + equal;
    }

    /** Share of the readings from a number to a number, both included. */
    double within(long from, long to) {
        return upTo(to) - upTo(from - 1);
    }

    private static double weight(char read, int digit) {
        if (read == '?') {
            return (1.0 + CONFUSED[digit]) / ALL;
        }
        return read - '0' == digit ? 1 : 0;
    }
}
