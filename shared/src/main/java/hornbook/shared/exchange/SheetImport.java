package hornbook.shared.exchange;

import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import hornbook.shared.store.Writing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Takes a person's own spreadsheet, saved as text, into the books: every good row in one deed, every bad one named. */
public final class SheetImport {
    private static final int FIRST_ROWS = 3;

    private final Books books;
    private final SizeReader sizes;
    private final Names names;

    public SheetImport(Books books, SizeReader sizes, Names names) {
        this.books = books;
        this.sizes = sizes;
        this.names = names;
    }

    /**
     * Reads a file.
     *
     * @param map column to field, for columns that are not headed as their field
     * @param dryRun reports what would be taken and changes nothing
     * @throws BadInput where nothing of the file can be read, or the map names what is not there
     */
    public ImportReport from(Path file, SheetKind kind, Map<String, String> map, boolean dryRun) {
        List<String> remarks = new ArrayList<>();
        CsvFile sheet = read(file, remarks);
        Optional<String> kept = SheetMaps.kept(books, kind);
        SheetColumns columns =
                SheetColumns.of(kind, sheet.columns(), SheetMaps.with(kept, sheet.columns(), map), remarks);
        List<Row> rows = sheet.rows().stream().filter(SheetImport::filled).toList();
        List<Refusal> refused = new ArrayList<>(sheet.refused());
        int[] taken = {0};
        books.attempt("import of " + file.getFileName(), writing -> {
            SheetRows taker = taker(kind, columns, rows, remarks);
            for (Row row : rows) {
                Refusal no = take(writing, taker, sheet.name(), columns, row);
                if (no == null) {
                    taken[0]++;
                } else {
                    refused.add(no);
                }
            }
            if (!dryRun && taken[0] > 0) {
                SheetMaps.keep(writing, kind, kept, map);
            }
            return !dryRun && taken[0] > 0;
        });
        int read = rows.size() + sheet.refused().size();
        return new ImportReport(read, taken[0], List.copyOf(refused), List.copyOf(new LinkedHashSet<>(remarks)));
    }

    /**
     * How a file would be read.
     *
     * @param map column to field, as for {@link #from}; an empty field leaves its column out
     * @throws BadInput where nothing of the file can be read
     */
    public SheetLook look(Path file, SheetKind kind, Map<String, String> map) {
        List<String> remarks = new ArrayList<>();
        SheetText text = text(file, remarks);
        CsvFile sheet = sheet(file, text);
        SheetColumns columns = SheetColumns.guess(
                kind, sheet.columns(), SheetMaps.with(SheetMaps.kept(books, kind), sheet.columns(), map), remarks);
        SheetGuess guess = new SheetGuess(sheet.rows().stream()
                .flatMap(row -> row.cells().values().stream())
                .toList());
        Map<String, String> fields = new LinkedHashMap<>();
        columns.byField().forEach((field, column) -> fields.put(column, field));
        return new SheetLook(
                text.encoding(),
                SheetGuess.separator(text.separator()),
                guess.decimals(),
                guess.dates(),
                sheet.columns(),
                fields,
                columns.lacking(kind),
                sheet.rows().stream()
                        .limit(FIRST_ROWS)
                        .map(row -> row.inOrder(sheet.columns()))
                        .toList());
    }

    /**
     * Writes the rows that were refused as a sheet of their own, each with why.
     *
     * @throws BadInput where that file cannot be written
     */
    public void rowsToFix(Path file, ImportReport report, Path to) {
        RowsToFix.write(read(file, new ArrayList<>()), report.refused(), file, to);
    }

    private static CsvFile read(Path file, List<String> remarks) {
        return sheet(file, text(file, remarks));
    }

    private static SheetText text(Path file, List<String> remarks) {
        try {
            return SheetText.read(file, remarks);
        } catch (FileText.Unreadable e) {
            throw new BadInput(file.getFileName() + " " + e.why());
        }
    }

    private static CsvFile sheet(Path file, SheetText text) {
        String name = String.valueOf(file.getFileName());
        CsvFile sheet = CsvFile.ofList(name, text.text(), text.separator()).withoutBlankColumns();
        if (sheet.columns().isEmpty()) {
            String why = sheet.refused().stream().map(Refusal::why).findFirst().orElse("is empty");
            throw new BadInput(name + " " + why);
        }
        return sheet;
    }

    private static boolean filled(Row row) {
        return row.cells().values().stream().anyMatch(cell -> !cell.isBlank());
    }

    private static @Nullable Refusal take(
            Writing writing, SheetRows taker, String file, SheetColumns columns, Row row) {
        try {
            taker.take(writing, field -> sound(field, columns.cell(row, field)));
            return null;
        } catch (CellRefused e) {
            return new Refusal(file, row.number(), row.line(), e.field(), e.why());
        } catch (BadInput e) {
            return new Refusal(file, row.number(), row.line(), null, String.valueOf(e.getMessage()));
        }
    }

    private static String sound(String field, String cell) {
        SheetCells.broken(cell).ifPresent(why -> {
            throw new CellRefused(field, why);
        });
        return cell;
    }

    private SheetRows taker(SheetKind kind, SheetColumns columns, List<Row> rows, List<String> remarks) {
        return books.reading(view -> switch (kind) {
            case DRAWERS ->
                new DrawerRows(new SheetPlaces(view, remarks), dates("last_looked_through", columns, rows, remarks));
            case LOTS -> new LotRows(new SheetPlaces(view, remarks), sizes, names, view.today(), remarks);
            case HORNS -> new HornRows(names, new Owners(view), view.today(), remarks);
            case JOBS -> new JobRows(dates("took_in", columns, rows, remarks), dates("done", columns, rows, remarks));
            case HOURS -> new HourRows(view, dates("date", columns, rows, remarks), names, remarks);
            case SUPPLIERS -> new SupplierRows(view);
        });
    }

    /** One hand writes all the days of a sheet: a day in any of these columns settles the order for each. */
    private static SheetDates dates(String field, SheetColumns columns, List<Row> rows, List<String> remarks) {
        return new SheetDates(
                field,
                Stream.of("last_looked_through", "took_in", "done", "date")
                        .flatMap(dated -> rows.stream().map(row -> columns.cell(row, dated)))
                        .toList(),
                remarks);
    }
}
