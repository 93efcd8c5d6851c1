package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Mistake;
import hornbook.catalogue.entry.Span;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitKind;
import hornbook.shared.exchange.CsvFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** looks.csv: how looks at the traits that models state go wrong; mistakes as {@code true>seen:rate}. */
final class LooksFile {
    static final String NAME = "looks.csv";
    private static final List<String> COLUMNS =
            List.of("trait", "kind", "cost", "miss", "meas_sd_mm", "span_mm", "named_mistake");
    private static final Pattern MISTAKE = Pattern.compile("([^>]+)>([^:]+):(.+)");
    private static final Pattern SPAN = Pattern.compile("([\\d.]+)-([\\d.]+)");

    /** A row that says what the trait's entry says already changes nothing; another makes an entry of the shop. */
    void read(Path file, Intake intake) {
        new Table(file, COLUMNS).read(intake, cells -> {
            Trait trait = intake.before().traits().get(cells.text("trait"));
            if (trait == null) {
                throw new BadCell("trait", "no trait is called so: add its entry first");
            }
            unchanged("kind", kind(trait), cells.text("kind"));
            unchanged("cost", trait.cost().word(), cells.text("cost"));
            Trait looked = trait.looked(
                    share("miss", cells.text("miss")),
                    cells.list("named_mistake", ";").stream()
                            .map(text -> mistake(trait, text))
                            .toList(),
                    cells.optionalNumber("meas_sd_mm"),
                    span(cells.optional("span_mm")));
            intake.mention(trait.id(), NAME);
            if (!looked.equals(trait)) {
                intake.take(looked, cells.place());
            }
        });
    }

    void write(Catalogue catalogue, Sorted sorted, Path file) throws IOException {
        List<List<String>> rows = sorted.by(List.copyOf(catalogue.traits().values()), NAME)
                .filter(t -> t.modelled() && (t.kind() == TraitKind.ONE || t.kind() == TraitKind.NUMBER))
                .map(LooksFile::row)
                .toList();
        CsvFile.write(file, COLUMNS, rows);
    }

    private static void unchanged(String field, String is, String said) {
        if (!is.equals(said)) {
            throw new BadCell(field, "the entry of the trait says " + is + ": change it there");
        }
    }

    private static String kind(Trait trait) {
        return trait.kind() == TraitKind.NUMBER ? "num" : trait.kind().word();
    }

    private static double share(String field, String text) {
        double share = Decimals.read(field, text);
        if (share < 0 || share > 1) {
            throw new BadCell(field, text + " is not a share between 0 and 1");
        }
        return share;
    }

    private static Mistake mistake(Trait trait, String text) {
        Matcher mistake = MISTAKE.matcher(text);
        if (!mistake.matches()) {
            throw new BadCell("named_mistake", "“" + text + "” is not true>seen:rate");
        }
        for (String value : List.of(mistake.group(1), mistake.group(2))) {
            if (trait.value(value).isEmpty()) {
                throw new BadCell("named_mistake", value + " is not a value of " + trait.id());
            }
        }
        return new Mistake(mistake.group(1), mistake.group(2), share("named_mistake", mistake.group(3)));
    }

    private static @Nullable Span span(@Nullable String text) {
        if (text == null) {
            return null;
        }
        Matcher span = SPAN.matcher(text.strip());
        if (!span.matches()) {
            throw new BadCell("span_mm", "“" + text + "” is not a span: write 22-70");
        }
        return new Span(Decimals.read("span_mm", span.group(1)), Decimals.read("span_mm", span.group(2)));
    }

    private static List<String> row(Trait trait) {
        Span span = trait.span();
        return List.of(
                trait.id(),
                kind(trait),
                trait.cost().word(),
                Decimals.shortest(trait.miss()),
                Decimals.write(trait.spread(), 0),
                span == null ? "" : Decimals.shortest(span.low()) + "-" + Decimals.shortest(span.high()),
                trait.mistakes().stream()
                        .map(m -> m.truth() + ">" + m.seen() + ":" + Decimals.shortest(m.rate()))
                        .collect(Collectors.joining(";")));
    }
}
