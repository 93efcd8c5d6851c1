package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.Years;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** {@code makes.csv}: a maker a row. */
final class Makes {
    static final String FILE = "makes.csv";
    static final List<String> COLUMNS = List.of("id", "name", "other_names", "place", "years", "notes");

    private Makes() {}

    static Make entry(Cells row) {
        String others = row.optional("other_names");
        return new Make(
                row.text("id"),
                row.text("name"),
                others == null ? List.of() : List.of(others.split("; ")),
                row.optional("place"),
                years(row.optional("years")),
                row.optional("notes"),
                "this shop",
                "as the shop has it");
    }

    private static @Nullable Years years(@Nullable String cell) {
        if (cell == null) {
            return null;
        }
        String[] ends = cell.split("-", -1);
        if (ends.length != 2) {
            throw new BadRow("years", "“" + cell + "” is not written as 1896-1963, or 1955- where it goes on");
        }
        return new Years(year(ends[0]), year(ends[1]));
    }

    private static @Nullable Integer year(String text) {
        try {
            return text.isBlank() ? null : Integer.valueOf(text.strip());
        } catch (NumberFormatException e) {
            throw new BadRow("years", "“" + text + "” is not a year");
        }
    }

    static List<String> cells(Make make) {
        return List.of(
                make.id(),
                make.title(),
                String.join("; ", make.otherNames()),
                text(make.place()),
                years(make.years()),
                text(make.notes()));
    }

    private static String years(@Nullable Years years) {
        return years == null ? "" : Numbers.whole(years.from()) + "-" + Numbers.whole(years.to());
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }
}
