package hornbook.catalogue.exchange;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The cells of a row, read by column. */
record Cells(Map<String, String> byColumn) {

    String text(String column) {
        String cell = byColumn.getOrDefault(column, "");
        if (cell.isBlank()) {
            throw new BadRow(column, "is empty");
        }
        return cell;
    }

    @Nullable
    String optional(String column) {
        String cell = byColumn.getOrDefault(column, "");
        return cell.isEmpty() ? null : cell;
    }

    @Nullable
    Integer whole(String column) {
        String cell = optional(column);
        if (cell == null) {
            return null;
        }
        try {
            return Integer.valueOf(cell);
        } catch (NumberFormatException e) {
            throw new BadRow(column, "“" + cell + "” is not a whole number");
        }
    }

    @Nullable
    Double number(String column) {
        String cell = optional(column);
        return cell == null ? null : number(column, cell);
    }

    static double number(String column, String cell) {
        try {
            double number = Double.parseDouble(cell);
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException e) {
            // Said below.
        }
        throw new BadRow(column, "“" + cell + "” is not a number as 2.5");
    }
}
