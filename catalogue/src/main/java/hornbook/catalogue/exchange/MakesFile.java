package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.Years;
import hornbook.shared.exchange.CsvFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** makes.csv: other names between semicolons, years as {@code 1896-1963} or {@code 1955-}. */
final class MakesFile {
    static final String NAME = "makes.csv";
    private static final List<String> COLUMNS = List.of("id", "name", "other_names", "place", "years", "notes");
    private static final Pattern YEARS = Pattern.compile("(\\d{4})?-(\\d{4})?");

    void read(Path file, Intake intake) {
        new Table(file, COLUMNS).read(intake, cells -> intake.take(make(cells), cells.place()));
    }

    void write(Catalogue catalogue, Sorted sorted, Path file) throws IOException {
        var makes = sorted.own(catalogue, catalogue.makes().values(), NAME);
        CsvFile.write(file, COLUMNS, makes.map(MakesFile::row).toList());
    }

    private static Make make(Cells cells) {
        return new Make(
                cells.text("id"),
                cells.text("name"),
                cells.list("other_names", ";"),
                cells.optional("place"),
                years(cells.optional("years")),
                cells.optional("notes"),
                "this shop",
                "as the shop has it");
    }

    private static @Nullable Years years(@Nullable String text) {
        if (text == null) {
            return null;
        }
        Matcher years = YEARS.matcher(text.strip());
        if (!years.matches()) {
            throw new BadCell("years", "“" + text + "” is not a span of years: write 1896-1963 or 1955-");
        }
        return new Years(year(years.group(1)), year(years.group(2)));
    }

    private static @Nullable Integer year(@Nullable String text) {
        return text == null ? null : Integer.valueOf(text);
    }

    private static List<String> row(Make make) {
        Years years = make.years();
        return List.of(
                make.id(),
                make.title(),
                String.join("; ", make.otherNames()),
                Objects.toString(make.place(), ""),
                years == null ? "" : Objects.toString(years.from(), "") + "-" + Objects.toString(years.to(), ""),
                Objects.toString(make.notes(), ""));
    }
}
