package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitKind;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.store.Books;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Findings whose subject is a trait, as looks: the latest day's of each trait, gauges' known errors taken off. */
final class FindingLooks {
    private final Catalogue catalogue;
    private final SeenReader reader;
    private final Map<String, Double> errors;

    FindingLooks(Catalogue catalogue, Books books) {
        this.catalogue = catalogue;
        this.reader = new SeenReader(catalogue);
        this.errors = books.all(ShopTool.class).stream()
                .flatMap(t -> error(t).map(e -> Map.entry(t.id(), e)).stream())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static Optional<Double> error(ShopTool tool) {
        try {
            return Optional.of(Double.parseDouble(tool.errorMm().trim()));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    List<Seen> looks(List<Finding> findings) {
        Map<String, List<Finding>> byTrait = new LinkedHashMap<>();
        findings.stream()
                .filter(f -> catalogue.traits().containsKey(f.what()))
                .sorted(Comparator.comparing(Finding::date).thenComparing(Finding::id))
                .forEach(f -> byTrait.computeIfAbsent(f.what(), _ -> new ArrayList<>())
                        .add(f));
        List<Seen> looks = new ArrayList<>();
        byTrait.forEach((trait, all) -> all.stream()
                .filter(f -> f.date().equals(all.getLast().date()))
                .filter(f -> measured(f) || f == all.getLast())
                .forEach(f -> one(f).ifPresent(looks::add)));
        return looks;
    }

    private boolean measured(Finding finding) {
        Trait trait = catalogue.traits().get(finding.what());
        return trait != null && trait.kind() == TraitKind.NUMBER;
    }

    private Optional<Seen> one(Finding finding) {
        try {
            Seen seen = reader.read(finding.what() + "=" + finding.value() + " " + finding.unit());
            return Optional.of(corrected(seen, finding));
        } catch (BadInput e) {
            // What the books hold under a trait's name need not be one of its values: it then tells nothing here.
            return Optional.empty();
        }
    }

    private Seen corrected(Seen seen, Finding finding) {
        String tool = finding.tool();
        return seen instanceof Seen.Measured(String trait, double mm, double spread) && tool != null
                ? new Seen.Measured(trait, mm - errors.getOrDefault(tool, 0.0), spread)
                : seen;
    }
}
