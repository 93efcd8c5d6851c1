package hornbook.shared.exchange;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import hornbook.shared.store.SafeFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * A CSV file read whole, with a header row.
 *
 * @param columns none where the file cannot be read
 * @param rows those with as many cells as the header
 * @param refused those with more or fewer, or why the file cannot be read
 * @param ragged the cells of those with more or fewer, as far as they go; what is over stands in the last
 */
public record CsvFile(String name, List<String> columns, List<Row> rows, List<Refusal> refused, List<Row> ragged) {
    private static final String NAMELESS = "column ";

    /** Reads a file of UTF-8, separated by commas; what cannot be read stands in {@link #refused()}. */
    public static CsvFile read(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            return read(name, FileText.utf8(file), ',');
        } catch (FileText.Unreadable e) {
            return unreadable(name, e.why());
        }
    }

    /** A person's own list: nameless columns are named by their letter, and a name that stands twice gets a number. */
    static CsvFile ofList(String name, String text, char separator) {
        return read(name, text, separator, CsvFile::apart);
    }

    static CsvFile read(String name, String text, char separator) {
        return read(name, text, separator, UnaryOperator.identity());
    }

    private static List<String> apart(List<String> headings) {
        List<String> apart = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            String heading = headings.get(i).isEmpty() ? NAMELESS + letters(i) : headings.get(i);
            String name = heading;
            for (int n = 2; apart.contains(name); n++) {
                name = heading + " (" + n + ")";
            }
            apart.add(name);
        }
        return apart;
    }

    /** As spreadsheet programs call their columns: A to Z, then AA. */
    private static String letters(int column) {
        String last = String.valueOf((char) ('A' + column % 26));
        return column < 26 ? last : letters(column / 26 - 1) + last;
    }

    /** Without nameless columns in which nothing stands. */
    CsvFile withoutBlankColumns() {
        List<String> kept = columns.stream()
                .filter(column -> !column.startsWith(NAMELESS)
                        || rows.stream()
                                .anyMatch(row ->
                                        !row.cells().getOrDefault(column, "").isBlank()))
                .toList();
        return new CsvFile(name, kept, rows, refused, ragged);
    }

    private static CsvFile read(String name, String text, char separator, UnaryOperator<List<String>> headings) {
        CsvFile read = new CsvFile(name, new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        long last = 1;
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .allowMissingFields(true)
                .allowExtraFields(true)
                .ofCsvRecord(text)) {
            for (CsvRecord record : reader) {
                read.take(record, headings);
                last = record.getStartingLineNumber();
            }
        } catch (CsvParseException | UncheckedIOException | IOException e) {
            return unreadable(name, "a cell is too long to be one: look for a quotation mark that is not closed");
        }
        if (OpenQuote.atEnd(text, last, separator)) {
            return unreadable(name, "a quotation mark on line " + last + " is not closed: close it and try again");
        }
        return read.columns.size() == new HashSet<>(read.columns).size()
                ? read
                : unreadable(name, "has two columns of one name: rename or remove one");
    }

    /** Nothing is taken from a file that cannot be read to its end: the rest may have been worth more. */
    private static CsvFile unreadable(String name, String why) {
        return new CsvFile(name, List.of(), List.of(), List.of(Refusal.wholeFile(name, why)), List.of());
    }

    private void take(CsvRecord record, UnaryOperator<List<String>> headings) {
        List<String> cells = record.getFields();
        if (columns.isEmpty()) {
            columns.addAll(headings.apply(cells.stream().map(String::strip).toList()));
            return;
        }
        long number = rows.size() + refused.size() + 2L;
        if (cells.size() != columns.size()) {
            refused.add(new Refusal(
                    name,
                    number,
                    record.getStartingLineNumber(),
                    null,
                    "has " + cells.size() + " cells where the header has " + columns.size()
                            + ": quote a cell that holds a comma"));
            ragged.add(new Row(number, record.getStartingLineNumber(), named(cells)));
            return;
        }
        rows.add(new Row(number, record.getStartingLineNumber(), named(cells)));
    }

    private Map<String, String> named(List<String> cells) {
        Map<String, String> named = HashMap.newHashMap(cells.size());
        for (int i = 0; i < cells.size(); i++) {
            named.merge(columns.get(Math.min(i, columns.size() - 1)), cells.get(i), (a, b) -> a + ", " + b);
        }
        return named;
    }

    /** Writes rows under a header, quoting only what must be; the name holds the old file or the whole new one. */
    public static void write(Path file, List<String> columns, Iterable<List<String>> rows) throws IOException {
        Path aside = file.resolveSibling("." + file.getFileName() + ".new");
        try {
            try (CsvWriter writer =
                    CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(Files.newBufferedWriter(aside))) {
                writer.writeRecord(columns);
                rows.forEach(writer::writeRecord);
            }
            SafeFiles.rename(aside, file);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } finally {
            Files.deleteIfExists(aside);
        }
    }
}
