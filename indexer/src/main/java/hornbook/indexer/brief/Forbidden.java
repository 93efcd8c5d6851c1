package hornbook.indexer.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.UseOn;
import hornbook.catalogue.entry.Verdict;
import hornbook.catalogue.identify.Identify;
import hornbook.catalogue.identify.Question;
import hornbook.catalogue.may.May;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What may not be used on the finish, body and keys that the horn has, or may have. */
final class Forbidden {
    private static final List<String> FINISH =
            List.of("body-finish", "lacquer-type", "key-finish", "body-material", "key-material");
    private static final double FROM = 0.10;
    private static final double SURE = 0.90;

    private final Catalogue catalogue;
    private final Identify identify;
    private final May may;

    Forbidden(Catalogue catalogue, Identify identify, May may) {
        this.catalogue = catalogue;
        this.identify = identify;
        this.may = may;
    }

    /** Each use once, for the value that is likeliest to forbid it; sure ones first. */
    List<MayNot> list(Question horn) {
        Map<String, MayNot> uses = new LinkedHashMap<>();
        for (String trait : FINISH) {
            identify.values(horn, trait).entrySet().stream()
                    .filter(v -> v.getValue() >= FROM)
                    .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                    .forEach(v -> add(trait, v.getKey(), v.getValue(), uses));
        }
        return uses.values().stream()
                .sorted(Comparator.comparing(MayNot::possible))
                .toList();
    }

    private void add(String trait, String value, double chance, Map<String, MayNot> uses) {
        for (UseOn use : may.against(trait, value)) {
            if (use.verdict() == Verdict.STOP) {
                MayNot line = new MayNot(
                        use.use(),
                        catalogue.entry(use.use()).map(Entry::title).orElse(use.use()),
                        trait + "=" + value,
                        chance < SURE,
                        use.why(),
                        use.instead());
                uses.merge(use.use(), line, (a, b) -> a.possible() && !b.possible() ? b : a);
            }
        }
    }
}
