package hornbook.shared.measure;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/** Reads the shipped tables that lie beside this package. */
final class Table {
    private Table() {}

    /**
     * One value a row.
     *
     * @throws IllegalStateException if the table is not in the jar: a fault of the build
     */
    static <T> List<T> rows(String name, Function<NamedCsvRecord, T> row) {
        try (InputStream in = Table.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("table " + name + " is missing from the build");
            }
            try (CsvReader<NamedCsvRecord> csv =
                    CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                return csv.stream().map(row).toList();
            }
        } catch (IOException broken) {
            throw new UncheckedIOException("table " + name + " cannot be read", broken);
        }
    }
}
