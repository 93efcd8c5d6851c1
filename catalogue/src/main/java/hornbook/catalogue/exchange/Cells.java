package hornbook.catalogue.exchange;

import hornbook.shared.exchange.Row;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The cells of one row, asked for by column and type.
 *
 * @param place where the row stands
 */
record Cells(Place place, Row row) {
    String text(String column) {
        String text = optional(column);
        if (text == null) {
            throw new BadCell(column, "is empty: fill it in");
        }
        return text;
    }

    @Nullable
    String optional(String column) {
        String text = row.cells().getOrDefault(column, "");
        return text.isEmpty() ? null : text;
    }

    int whole(String column) {
        Integer number = optionalWhole(column);
        if (number == null) {
            throw new BadCell(column, "is empty: fill it in");
        }
        return number;
    }

    @Nullable
    Integer optionalWhole(String column) {
        String text = optional(column);
        try {
            return text == null ? null : Integer.valueOf(text.strip());
        } catch (NumberFormatException e) {
            throw new BadCell(column, "“" + text + "” is not a whole number");
        }
    }

    double number(String column) {
        Double number = optionalNumber(column);
        if (number == null) {
            throw new BadCell(column, "is empty: fill it in");
        }
        return number;
    }

    @Nullable
    Double optionalNumber(String column) {
        String text = optional(column);
        return text == null ? null : (Double) Decimals.read(column, text);
    }

    /** A list in one cell. */
    List<String> list(String column, String separator) {
        String text = optional(column);
        return text == null
                ? List.of()
                : Arrays.stream(text.split(separator, -1))
                        .map(String::strip)
                        .filter(s -> !s.isEmpty())
                        .toList();
    }
}
