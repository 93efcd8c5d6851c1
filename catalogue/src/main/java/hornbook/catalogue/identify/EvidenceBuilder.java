package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Provenance;
import hornbook.catalogue.entry.Shares;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitKind;
import hornbook.shared.shop.Horn;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Folds what the entries state, and what sure horns taught since, into evidence trait by trait. */
final class EvidenceBuilder {
    private static final double SILENT = 4;

    private final Catalogue catalogue;
    private final List<Model> models;
    private final Map<String, Map<Integer, List<Taught>>> taught = new HashMap<>();

    EvidenceBuilder(Catalogue catalogue, Experience experience) {
        this.catalogue = catalogue;
        this.models = List.copyOf(catalogue.models().values());
        List<String> ids = models.stream().map(Model::id).toList();
        for (Horn horn : experience.sure()) {
            int entry = ids.indexOf(horn.model());
            for (Seen seen : experience.looks(horn.id())) {
                teach(entry, horn.id(), seen);
            }
        }
    }

    private void teach(int entry, String horn, Seen seen) {
        if (entry >= 0 && !(seen instanceof Seen.CannotTell)) {
            taught.computeIfAbsent(seen.trait(), _ -> new HashMap<>())
                    .computeIfAbsent(entry, _ -> new ArrayList<>())
                    .add(new Taught(horn, seen));
        }
    }

    List<Model> models() {
        return models;
    }

    /** By trait id, in the order of looking a horn over; a mark is no such evidence. */
    Map<String, Evidence> build() {
        Map<String, Evidence> all = new LinkedHashMap<>();
        for (Trait trait : catalogue.traits().values()) {
            if (trait.kind() != TraitKind.MARK) {
                all.put(trait.id(), evidence(trait));
            }
        }
        return all;
    }

    private Evidence evidence(Trait trait) {
        return switch (trait.kind()) {
            case ONE -> choice(trait);
            case NUMBER ->
                new MeasureEvidence(
                        trait, models.stream().map(m -> m.normal(trait.id())).toList(), teaching(trait));
            case MANY ->
                new PartsEvidence(
                        trait,
                        SeenReader.parts(trait),
                        models.stream()
                                .map(m -> m.traitsMany().getOrDefault(trait.id(), Map.of()))
                                .toList(),
                        teaching(trait));
            case MARK -> throw new IllegalArgumentException(trait.id());
        };
    }

    private ChoiceEvidence choice(Trait trait) {
        boolean absent = models.stream().anyMatch(m -> m.absent().contains(trait.id()));
        Misses misses = new Misses(trait, absent);
        double[][] shares = new double[models.size()][];
        for (int e = 0; e < shares.length; e++) {
            shares[e] = shares(models.get(e), trait, misses);
        }
        return new ChoiceEvidence(trait, misses, shares, teaching(trait));
    }

    private static double[] shares(Model model, Trait trait, Misses misses) {
        if (model.absent().contains(trait.id())) {
            return ChoiceEvidence.shares(Map.of(Seen.Absent.WORD, 1.0), misses.values());
        }
        return model.shares(trait.id())
                .map(Shares::of)
                .map(stated -> ChoiceEvidence.shares(stated, misses.values()))
                .orElseGet(() -> new double[0]);
    }

    private Teaching teaching(Trait trait) {
        Map<Integer, List<Taught>> looks = taught.getOrDefault(trait.id(), Map.of());
        double[] weights = new double[looks.isEmpty() ? 0 : models.size()];
        for (int e : looks.keySet()) {
            weights[e] = states(models.get(e), trait) ? weight(models.get(e)) : SILENT;
        }
        return new Teaching(looks, weights);
    }

    private static boolean states(Model model, Trait trait) {
        return model.traits().containsKey(trait.id()) || model.traitsMany().containsKey(trait.id());
    }

    /** How many looks a stated figure is worth, by its source. */
    private static double weight(Model model) {
        Provenance source = model.provenance();
        return switch (Objects.requireNonNull(source.basis())) {
            case PUBLISHED -> 20;
            case COMMON_PRACTICE -> 10;
            case MEMORY -> 4;
            case THIS_SHOP -> Math.max(1, source.jobs().size());
        };
    }
}
