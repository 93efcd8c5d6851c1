package hornbook.shared.exchange;

import java.util.List;
import java.util.Map;

/**
 * A record of a CSV file: cells by column name.
 *
 * @param number counts records, the header is 1
 * @param line the line on which it begins
 */
public record Row(long number, long line, Map<String, String> cells) {

    /** The cells in the order of these columns; a column the file lacks is empty. */
    public List<String> inOrder(List<String> columns) {
        return columns.stream().map(column -> cells.getOrDefault(column, "")).toList();
    }
}
