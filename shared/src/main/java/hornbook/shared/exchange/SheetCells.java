package hornbook.shared.exchange;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What a cell of a person's list says, apart from the marks of the program that wrote it. */
final class SheetCells {
    private static final Set<String> NOTHING = Set.of("-", "--", "—", "–", "n/a", "N/A", "n.a.", "none known");

    /** What spreadsheet programs write where a formula came to nothing. */
    private static final Pattern BROKEN =
            Pattern.compile("#(REF!|N/A|VALUE!|NAME\\?|DIV/0!|NUM!|NULL!|WERT!|BEZUG!)|#{3,}|Err:\\d+");

    /** A number that was made text of by an apostrophe before it. */
    private static final Pattern HELD = Pattern.compile("'(?=[0-9=+@-])");

    private SheetCells() {}

    static String said(String cell) {
        String text = HELD.matcher(cell.strip()).replaceFirst(m -> m.start() == 0 ? "" : m.group());
        return NOTHING.contains(text) ? "" : text;
    }

    /** Why nothing can be taken from the cell, whatever it holds. */
    static Optional<String> broken(String cell) {
        return BROKEN.matcher(cell).matches()
                ? Optional.of("“" + cell
                        + "” is what a spreadsheet program writes where its formula fails: write what is meant")
                : Optional.empty();
    }
}
