package hornbook.catalogue.hornmap;

import hornbook.catalogue.hornmap.CupLine.Size;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.MapRow;
import hornbook.shared.shop.PadUsed;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.store.Books;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was read on one horn, on all its jobs; the latest word counts. */
final class HornReadings {
    private final Books books;
    private final SizeReader sizes;
    private final List<Finding> findings;
    private final List<PadUsed> pads;
    private final List<MapRow> keys;

    HornReadings(Books books, String horn, SizeReader sizes) {
        this.books = books;
        this.sizes = sizes;
        this.findings = books.where(Finding.class, "horn", horn).stream()
                .sorted(Comparator.comparing(Finding::date).thenComparing(Finding::id))
                .toList();
        this.pads = books.where(PadUsed.class, "horn", horn);
        this.keys = books.where(MapRow.class, "horn", horn);
    }

    /** Everything seen at a cup, the newest first. */
    List<Finding> at(String cup) {
        return findings.reversed().stream().filter(f -> f.where().equals(cup)).toList();
    }

    /** Was anything read or fitted there? */
    boolean touched(String cup) {
        return !at(cup).isEmpty() || pad(cup).isPresent() || key(cup).isPresent();
    }

    /** The latest reading of a kind at a cup, less the known error of the tool it names. */
    Optional<Size> size(String what, String cup, boolean left) {
        return at(cup).stream()
                .filter(f -> f.what().equals(what) && f.asFoundOrLeft().equals("left") == left)
                .flatMap(f -> millimetres(f).stream())
                .findFirst();
    }

    private Optional<Size> millimetres(Finding finding) {
        return sizes.length((finding.value() + " " + finding.unit()).strip(), LengthUnit.MILLIMETRE)
                .found()
                .map(length -> new Size(rounded(length.mm() - error(finding.tool())), finding.job()));
    }

    private double error(@Nullable String tool) {
        return tool == null
                ? 0
                : books.find(ShopTool.class, tool)
                        .map(ShopTool::errorMm)
                        .filter(error -> error.strip().matches("[+-]?\\d{1,2}(\\.\\d{1,4})?"))
                        .map(Double::parseDouble)
                        .orElse(0.0);
    }

    private static double rounded(double mm) {
        return Math.round(mm * 1000) / 1000.0;
    }

    Optional<Size> pad(String cup) {
        return pads.stream()
                .filter(pad -> pad.cup().equals(cup))
                .reduce((before, after) -> after)
                .map(pad -> new Size(pad.sizeMm().doubleValue(), pad.job()));
    }

    Optional<MapRow> key(String cup) {
        return keys.stream().filter(row -> cup.equals(row.cup())).reduce((before, after) -> after);
    }
}
