package hornbook.shared.measure;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.function.Function;

/** Rows of the tables, for tests; the test's own tables lie beside the shipped ones. */
final class Rows {
    static final StandardSizes SIZES = StandardSizes.load();
    static final SizeReader READER = SIZES.reader();

    private Rows() {}

    static List<NamedCsvRecord> of(String table) {
        return Table.rows(table, Function.identity());
    }

    static double number(NamedCsvRecord row, String field) {
        return Double.parseDouble(row.getField(field));
    }
}
