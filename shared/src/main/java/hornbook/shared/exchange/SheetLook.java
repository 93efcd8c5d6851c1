package hornbook.shared.exchange;

import java.util.List;
import java.util.Map;

/**
 * How a person's own spreadsheet was understood, before anything is taken from it.
 *
 * @param encoding of its letters, as UTF-8
 * @param separator between its cells, in a word
 * @param decimals how fractions are written: {@code comma}, {@code point}, {@code both}, or {@code none} where there are none
 * @param dates in which order days are written, in words
 * @param columns in their order
 * @param fields column to field, as it would be read; a column that is left out is missing
 * @param lacking fields that are needed and that no column holds
 * @param first the cells of the first rows, column by column
 */
public record SheetLook(
        String encoding,
        String separator,
        String decimals,
        String dates,
        List<String> columns,
        Map<String, String> fields,
        List<String> lacking,
        List<List<String>> first) {}
