package hornbook.shared.exchange;

import hornbook.shared.shop.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Writes the refused rows of a spreadsheet as a sheet of its own, each with why: corrected there, it comes back in. */
final class RowsToFix {
    /** Heads the column that says why; it is passed over when the sheet comes back. */
    static final String WHY = "why it was refused";

    private RowsToFix() {}

    /** @throws BadInput where the file cannot be written, or is the sheet itself */
    static void write(CsvFile sheet, List<Refusal> refused, Path source, Path to) {
        Map<Long, String> why = new HashMap<>();
        refused.forEach(refusal -> why.merge(
                refusal.row(),
                (refusal.field() == null ? "" : refusal.field() + " ") + refusal.why(),
                (a, b) -> a + "; " + b));
        List<List<String>> rows = Stream.concat(sheet.rows().stream(), sheet.ragged().stream())
                .sorted(Comparator.comparingLong(Row::number))
                .filter(row -> why.containsKey(row.number()))
                .map(row -> with(row.inOrder(columns(sheet)), why.getOrDefault(row.number(), "")))
                .toList();
        try {
            if (Files.exists(to) && Files.isSameFile(source, to)) {
                throw new BadInput(to + " is the list itself: name another file");
            }
            CsvFile.write(to, with(columns(sheet), WHY), rows);
        } catch (IOException e) {
            throw new BadInput(to + " cannot be written: name a file in a folder that is there and may be written");
        }
    }

    private static List<String> columns(CsvFile sheet) {
        return sheet.columns().stream().filter(column -> !column.equals(WHY)).toList();
    }

    private static List<String> with(List<String> cells, String last) {
        List<String> all = new ArrayList<>(cells);
        all.add(last);
        return all;
    }
}
