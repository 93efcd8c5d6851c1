package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Look;
import hornbook.catalogue.entry.Mistake;
import hornbook.catalogue.entry.Span;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitKind;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** {@code looks.csv}: how the looks at a trait go wrong. A row that says what is known already changes nothing. */
final class Looks {
    static final String FILE = "looks.csv";
    static final List<String> COLUMNS =
            List.of("trait", "kind", "cost", "miss", "meas_sd_mm", "span_mm", "named_mistake");

    private final Catalogue catalogue;

    Looks(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    void read(Cells row, Found into) {
        String id = row.text("trait");
        Trait known = catalogue.traits().get(id);
        if (known == null) {
            throw new BadRow("trait", "“" + id + "” is no trait that is known: correct it");
        }
        Trait told = told(known, row);
        if (told.equals(known)) {
            into.mention(id, FILE);
        } else {
            into.add(told, FILE);
        }
    }

    private static Trait told(Trait t, Cells row) {
        String miss = row.text("miss");
        return new Trait(
                t.id(),
                t.title(),
                t.question(),
                t.kind(),
                t.group(),
                t.values(),
                t.look(),
                cost(row.text("cost")),
                Cells.number("miss", miss),
                t.missNote(),
                mistakes(row.optional("named_mistake")),
                row.number("meas_sd_mm"),
                span(row.optional("span_mm")),
                t.unit(),
                t.usual(),
                t.marking(),
                t.uses(),
                t.modelled(),
                t.absentWhen(),
                t.source(),
                t.sureness());
    }

    private static Look cost(String word) {
        return Arrays.stream(Look.values())
                .filter(look -> look.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new BadRow(
                        "cost",
                        "“" + word + "” is none of "
                                + Arrays.stream(Look.values()).map(Look::word).collect(Collectors.joining(", "))));
    }

    private static List<Mistake> mistakes(@Nullable String cell) {
        return cell == null
                ? List.of()
                : Arrays.stream(cell.split(";")).map(Looks::mistake).toList();
    }

    private static Mistake mistake(String part) {
        String[] words = part.split("[>:]");
        if (words.length != 3) {
            throw new BadRow("named_mistake", "“" + part + "” is not written as true>seen:0.25");
        }
        return new Mistake(words[0], words[1], Cells.number("named_mistake", words[2]));
    }

    private static @Nullable Span span(@Nullable String cell) {
        if (cell == null) {
            return null;
        }
        String[] ends = cell.split("-");
        if (ends.length != 2) {
            throw new BadRow("span_mm", "“" + cell + "” is not written as 22-70");
        }
        return new Span(Cells.number("span_mm", ends[0]), Cells.number("span_mm", ends[1]));
    }

    /** The row of a trait that identification reckons with. */
    static Stream<List<String>> row(Trait t) {
        boolean reckoned = t.kind() == TraitKind.ONE || t.kind() == TraitKind.NUMBER;
        if (!t.modelled() || !reckoned) {
            return Stream.empty();
        }
        Span span = t.span();
        return Stream.of(List.of(
                t.id(),
                t.kind() == TraitKind.NUMBER ? "num" : t.kind().word(),
                t.cost().word(),
                Numbers.shortest(t.miss()),
                Numbers.shortest(t.spread()),
                span == null ? "" : Numbers.shortest(span.low()) + "-" + Numbers.shortest(span.high()),
                t.mistakes().stream()
                        .map(m -> m.truth() + ">" + m.seen() + ":" + Numbers.shortest(m.rate()))
                        .collect(Collectors.joining(";"))));
    }
}
