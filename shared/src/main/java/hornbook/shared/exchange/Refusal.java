package hornbook.shared.exchange;

import org.jspecify.annotations.Nullable;

/**
 * A row that was not taken.
 *
 * @param row counts records, the header is 1; 0 where the whole file is meant
 * @param line the line of the file on which the row begins
 * @param field the column, null where no single one is to blame
 * @param why what is wrong and what to write instead
 */
public record Refusal(
        String file, long row, long line, @Nullable String field, String why) {

    /** Which row, as a person finds it: blank rows and titles above shift it against the line of the file. */
    public String at() {
        return row == 0 ? file : "row " + row + (line == row ? "" : " (line " + line + ")");
    }

    /** A file of which nothing can be taken. */
    public static Refusal wholeFile(String file, String why) {
        return new Refusal(file, 0, 0, null, why);
    }
}
