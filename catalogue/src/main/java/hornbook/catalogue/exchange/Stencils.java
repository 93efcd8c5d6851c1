package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.MadeBy;
import hornbook.catalogue.entry.Seller;
import hornbook.catalogue.entry.Years;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** {@code stencils.csv}: a seller's name a row, with whose horns it hid and how often. */
final class Stencils {
    static final String FILE = "stencils.csv";
    static final List<String> COLUMNS = List.of("id", "name", "made_by", "year_from", "year_to", "how_known");

    private Stencils() {}

    static Seller entry(Cells row) {
        Integer from = row.whole("year_from");
        Integer to = row.whole("year_to");
        return new Seller(
                row.text("id"),
                row.text("name"),
                Arrays.stream(row.text("made_by").split(";"))
                        .map(Stencils::madeBy)
                        .toList(),
                from == null && to == null ? null : new Years(from, to),
                row.optional("how_known"),
                "this shop",
                "as the shop has it");
    }

    private static MadeBy madeBy(String part) {
        int colon = part.lastIndexOf(':');
        if (colon < 1) {
            throw new BadRow("made_by", "“" + part + "” is not written as model:0.45");
        }
        return new MadeBy(part.substring(0, colon), Cells.number("made_by", part.substring(colon + 1)));
    }

    static List<String> cells(Seller seller) {
        Years years = seller.years();
        return List.of(
                seller.id(),
                seller.title(),
                seller.madeBy().stream()
                        .map(by -> by.of() + ":" + Numbers.shortest(by.weight()))
                        .collect(Collectors.joining(";")),
                years == null ? "" : Numbers.whole(years.from()),
                years == null ? "" : Numbers.whole(years.to()),
                text(seller.howKnown()));
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }
}
