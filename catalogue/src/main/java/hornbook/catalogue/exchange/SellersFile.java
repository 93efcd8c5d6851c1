package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.MadeBy;
import hornbook.catalogue.entry.Seller;
import hornbook.catalogue.entry.Years;
import hornbook.shared.exchange.CsvFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** stencils.csv: who made what was sold under a name, as {@code model or its beginning:weight} between semicolons. */
final class SellersFile {
    static final String NAME = "stencils.csv";
    private static final List<String> COLUMNS = List.of("id", "name", "made_by", "year_from", "year_to", "how_known");

    void read(Path file, Intake intake) {
        new Table(file, COLUMNS).read(intake, cells -> intake.take(seller(cells), cells.place()));
    }

    void write(Catalogue catalogue, Sorted sorted, Path file) throws IOException {
        var sellers = sorted.own(catalogue, catalogue.sellers().values(), NAME);
        CsvFile.write(file, COLUMNS, sellers.map(SellersFile::row).toList());
    }

    private static Seller seller(Cells cells) {
        return new Seller(
                cells.text("id"),
                cells.text("name"),
                cells.list("made_by", ";").stream().map(SellersFile::madeBy).toList(),
                years(cells.optionalWhole("year_from"), cells.optionalWhole("year_to")),
                cells.optional("how_known"),
                "this shop",
                "as the shop has it");
    }

    private static MadeBy madeBy(String text) {
        int colon = text.lastIndexOf(':');
        if (colon < 1) {
            throw new BadCell("made_by", "“" + text + "” lacks its weight: write m-…:0.9;m-…:0.1");
        }
        return new MadeBy(text.substring(0, colon).strip(), Decimals.read("made_by", text.substring(colon + 1)));
    }

    private static @Nullable Years years(@Nullable Integer from, @Nullable Integer to) {
        return from == null && to == null ? null : new Years(from, to);
    }

    private static List<String> row(Seller seller) {
        Years years = Objects.requireNonNullElse(seller.years(), new Years(null, null));
        String madeBy = seller.madeBy().stream()
                .map(m -> m.of() + ":" + Decimals.shortest(m.weight()))
                .collect(Collectors.joining(";"));
        return List.of(
                seller.id(),
                seller.title(),
                madeBy,
                Objects.toString(years.from(), ""),
                Objects.toString(years.to(), ""),
                Objects.toString(seller.howKnown(), ""));
    }
}
