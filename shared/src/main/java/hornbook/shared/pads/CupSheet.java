package hornbook.shared.pads;

import hornbook.shared.exchange.CsvFile;
import hornbook.shared.exchange.Refusal;
import hornbook.shared.exchange.Row;
import hornbook.shared.measure.Reading;
import hornbook.shared.measure.SizeReader;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Measured cups from a CSV file: {@code cup,diameter[,job][,thickness][,rim]}, mm.
 *
 * @param refused rows not taken, each by row and field
 */
public record CupSheet(List<Cup> cups, List<Refusal> refused) {
    private static final BigDecimal NARROWEST = new BigDecimal("5.75");
    private static final BigDecimal WIDEST = new BigDecimal("72.25");
    private static final BigDecimal THINNEST = BigDecimal.ONE;
    private static final BigDecimal THICKEST = BigDecimal.valueOf(8);

    /** Reads a file; never fails for what is in it. */
    public static CupSheet read(Path file, SizeReader sizes) {
        CsvFile csv = CsvFile.read(file);
        CupSheet sheet = new CupSheet(new ArrayList<>(), new ArrayList<>(csv.refused()));
        String missing = String.join(
                ", ",
                Stream.of("cup", "diameter")
                        .filter(c -> !csv.columns().contains(c))
                        .toList());
        boolean unreadable = csv.columns().isEmpty() && !csv.refused().isEmpty();
        if (unreadable) {
            return sheet;
        }
        if (!missing.isEmpty()) {
            return new CupSheet(List.of(), List.of(Refusal.wholeFile(csv.name(), headings(csv, missing))));
        }
        Set<String> seen = new HashSet<>();
        csv.rows().forEach(row -> sheet.take(csv.name(), row, seen, new Millimetres(sizes)));
        return sheet;
    }

    private static String headings(CsvFile csv, String missing) {
        return csv.columns().stream().anyMatch(column -> column.contains(";"))
                ? "has semicolons between its columns: save it with commas, and sizes with a point, as 31.1"
                : "has no column " + missing + ": the first row must be cup,diameter[,job][,thickness]";
    }

    private void take(String file, Row row, Set<String> seen, Millimetres sizes) {
        Cells cells = new Cells(row, sizes);
        String cup = cells.text("cup");
        String job = cells.text("job");
        if (cup.isEmpty()) {
            cells.refuse("cup", "is empty: name the cup, as cup-low-b");
        } else if (!seen.add(job + "\n" + cup)) {
            cells.refuse("cup", "“" + cup + "” stands twice for this horn: keep one of the rows");
        }
        BigDecimal diameter = cells.measure("diameter", NARROWEST, WIDEST);
        BigDecimal thickness = cells.measure("thickness", THINNEST, THICKEST);
        BigDecimal rim = cells.measure("rim", THINNEST, WIDEST);
        if (diameter == null && cells.field == null) {
            cells.refuse("diameter", "is empty: write the cup's inside diameter in mm, as 31.1");
        }
        if (cells.field == null && diameter != null) {
            cups.add(new Cup(cup, diameter, job.isEmpty() ? null : job, thickness, rim));
        } else {
            refused.add(new Refusal(file, row.number(), row.line(), cells.field, cells.why));
        }
    }

    /** The cells of a row; remembers the first that is wrong. */
    private static final class Cells {
        private final Row row;
        private final Millimetres sizes;
        private @Nullable String field;
        private String why = "";

        Cells(Row row, Millimetres sizes) {
            this.row = row;
            this.sizes = sizes;
        }

        String text(String column) {
            return row.cells().getOrDefault(column, "").strip();
        }

        void refuse(String column, String reason) {
            if (field == null) {
                field = column;
                why = reason;
            }
        }

        @Nullable
        BigDecimal measure(String column, BigDecimal least, BigDecimal most) {
            String text = text(column);
            if (text.isEmpty()) {
                return null;
            }
            Reading<BigDecimal> reading = sizes.read(text);
            reading.refusal().ifPresent(why -> refuse(column, why));
            BigDecimal mm = reading.found().orElse(null);
            if (mm != null && (mm.compareTo(least) < 0 || mm.compareTo(most) >= 0)) {
                refuse(column, "“" + text + "” is not from " + least + " up to " + most + " mm: measure again");
            }
            return mm;
        }
    }
}
