package hornbook.shared.exchange;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A CSV file read whole: UTF-8, comma, a header row.
 *
 * @param rows those with as many cells as the header
 * @param refused those with more or fewer, and what made the rest of the file unreadable
 */
public record CsvFile(String name, List<String> columns, List<Row> rows, List<Refusal> refused) {

    /** Reads a file; what cannot be read stands in {@link #refused()}. */
    public static CsvFile read(Path file) {
        String name = String.valueOf(file.getFileName());
        CsvFile read = new CsvFile(name, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .allowMissingFields(true)
                .allowExtraFields(true)
                .ofCsvRecord(file)) {
            reader.forEach(read::take);
        } catch (CsvParseException e) {
            read.refused.add(Refusal.wholeFile(name, "a quotation mark is not closed, or a cell is too long"));
        } catch (UncheckedIOException | IOException e) {
            read.refused.add(Refusal.wholeFile(name, unreadable(e)));
        }
        return read;
    }

    private static String unreadable(Exception e) {
        boolean coding = e instanceof CharacterCodingException || e.getCause() instanceof CharacterCodingException;
        return coding ? "is not UTF-8 text: save it as CSV UTF-8" : "cannot be read: check its permissions";
    }

    private void take(CsvRecord record) {
        List<String> cells = record.getFields();
        if (columns.isEmpty()) {
            columns.addAll(
                    cells.stream().map(CsvFile::withoutMark).map(String::strip).toList());
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
            return;
        }
        Map<String, String> named = new HashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            named.put(columns.get(i), cells.get(i));
        }
        rows.add(new Row(number, record.getStartingLineNumber(), named));
    }

    private static String withoutMark(String cell) {
        return cell.startsWith("\uFEFF") ? cell.substring(1) : cell;
    }

    /** Writes rows under a header, quoting only what must be. */
    public static void write(Path file, List<String> columns, Iterable<List<String>> rows) throws IOException {
        try (CsvWriter writer =
                CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(Files.newBufferedWriter(file))) {
            writer.writeRecord(columns);
            rows.forEach(writer::writeRecord);
        }
    }
}
