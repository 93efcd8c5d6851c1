package hornbook.shared.exchange;

import hornbook.shared.shop.BadInput;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which column of a spreadsheet holds which field: as told, as named, or as guessed, and then said so. */
record SheetColumns(Map<String, String> byField) {

    /** @throws BadInput where the map names a column or field there is not */
    static SheetColumns of(SheetKind kind, List<String> columns, Map<String, String> told, List<String> remarks) {
        SheetColumns read = guess(kind, columns, told, remarks);
        List<String> lacking = read.lacking(kind);
        if (!lacking.isEmpty()) {
            throw new BadInput("no column holds " + String.join(", ", lacking) + ": name it with --map COLUMN="
                    + lacking.getFirst() + "; the columns are " + String.join(", ", columns));
        }
        return read;
    }

    /** Fields that are needed and that no column holds. */
    List<String> lacking(SheetKind kind) {
        return kind.needed().stream().filter(f -> !byField.containsKey(f)).toList();
    }

    /** As {@link #of}, also where a needed field has no column yet. A column told to be nothing is left out. */
    static SheetColumns guess(SheetKind kind, List<String> all, Map<String, String> told, List<String> remarks) {
        Map<String, String> byField = new HashMap<>();
        List<String> columns = all.stream()
                .filter(column -> !told.getOrDefault(column, "?").isEmpty())
                .toList();
        told.forEach((column, field) -> tell(kind, all, byField, column, field));
        for (String field : kind.fields()) {
            free(columns, byField, field, List.of(field)).ifPresent(column -> byField.put(field, column));
        }
        for (String field : kind.fields()) {
            free(columns, byField, field, Headings.of(kind, field)).ifPresent(column -> {
                byField.put(field, column);
                remarks.add("column “" + column + "” was read as " + field + ": say otherwise with --map");
            });
        }
        columns.stream()
                .filter(column -> !byField.containsValue(column) && !column.isBlank())
                .filter(column -> !column.equals(RowsToFix.WHY))
                .forEach(column -> remarks.add("column “" + column
                        + "” was left out: name its field with --map, one of " + String.join(", ", kind.fields())));
        return new SheetColumns(byField);
    }

    private static void tell(
            SheetKind kind, List<String> columns, Map<String, String> byField, String column, String field) {
        if (!columns.contains(column)) {
            throw new BadInput("--map " + column + "=" + field + ": there is no column “" + column + "”, only "
                    + String.join(", ", columns));
        }
        if (field.isEmpty()) {
            return;
        }
        if (!kind.fields().contains(field) || byField.put(field, column) != null) {
            throw new BadInput("--map " + column + "=" + field + ": the field must be named once and be one of "
                    + String.join(", ", kind.fields()));
        }
    }

    private static Optional<String> free(
            List<String> columns, Map<String, String> byField, String field, List<String> headings) {
        if (byField.containsKey(field)) {
            return Optional.empty();
        }
        return headings.stream()
                .flatMap(heading -> columns.stream()
                        .filter(column -> Headings.folded(column).equals(heading)))
                .filter(column -> !byField.containsValue(column))
                .findFirst();
    }

    /** A row's cell of a field, empty where no column holds it. */
    String cell(Row row, String field) {
        String column = byField.get(field);
        return column == null ? "" : SheetCells.said(row.cells().getOrDefault(column, ""));
    }
}
