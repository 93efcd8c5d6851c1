package hornbook.shared.shop;

import java.util.regex.Pattern;

/** What an entry's number says in words, where only the number is at hand: task-pads-out is pads out. */
public final class Plainly {
    private static final Pattern SORT = Pattern.compile("^(?:task|finding|q|stage|fault)-");

    private Plainly() {}

    public static String said(String id) {
        return SORT.matcher(id).replaceFirst("").replace('-', ' ');
    }
}
