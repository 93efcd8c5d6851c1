package hornbook.catalogue.exchange;

import hornbook.shared.exchange.CsvFile;
import hornbook.shared.exchange.Refusal;
import hornbook.shared.exchange.Row;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** Reads a CSV file row by row; a bad row is refused, the others are read. */
final class Table {
    private final Path file;
    private final List<String> columns;

    Table(Path file, List<String> columns) {
        this.file = file;
        this.columns = columns;
    }

    /** Hands each row on. A file that is not there is no fault; one that lacks a column is refused whole. */
    void read(Intake intake, Consumer<Cells> row) {
        if (!Files.exists(file)) {
            return;
        }
        CsvFile csv = CsvFile.read(file);
        csv.refused().forEach(intake::refuse);
        intake.count((int) csv.refused().stream().filter(r -> r.row() > 0).count());
        List<String> lacking =
                columns.stream().filter(c -> !csv.columns().contains(c)).toList();
        if (csv.columns().isEmpty()) {
            return;
        }
        if (!lacking.isEmpty()) {
            String why = "lacks the column " + String.join(", ", lacking) + ": add it to the header";
            intake.refuse(Refusal.wholeFile(csv.name(), why));
            return;
        }
        csv.columns().stream()
                .filter(c -> !columns.contains(c))
                .forEach(c -> intake.remark(csv.name() + ": nothing is known of a column " + c + "; it was left out"));
        csv.rows().forEach(r -> one(csv.name(), r, intake, row));
    }

    private static void one(String name, Row row, Intake intake, Consumer<Cells> reader) {
        intake.count();
        Cells cells = new Cells(new Place(name, row.number(), row.line()), row);
        try {
            reader.accept(cells);
        } catch (BadCell e) {
            intake.refuse(cells.place().refuse(e.field(), e.why()));
        }
    }
}
