package hornbook.indexer.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.identify.Candidate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The models and makes that the horn is likely of.
 *
 * @param models chance by model, likeliest first
 * @param makes chance by make's id
 */
record Likely(Map<Model, Double> models, Map<String, Double> makes) {
    /** From here on a model or make counts for what fits and what went before. */
    static final double COUNTS = 0.10;

    private static final double MORE_LIKELY_THAN_NOT = 0.5;

    static Likely of(List<Candidate> candidates, Catalogue catalogue) {
        Map<Model, Double> models = new LinkedHashMap<>();
        Map<String, Double> makes = new LinkedHashMap<>();
        for (Candidate candidate : candidates) {
            Model model = catalogue.models().get(candidate.id());
            if (model != null) {
                models.put(model, candidate.probability());
                makes.merge(model.make(), candidate.probability(), Double::sum);
            }
        }
        return new Likely(models, makes);
    }

    boolean counts(Model model) {
        return models.getOrDefault(model, 0.0) >= COUNTS;
    }

    boolean modelCounts(String id) {
        return models.keySet().stream().anyMatch(m -> m.id().equals(id) && counts(m));
    }

    boolean makeCounts(String make) {
        return makes.getOrDefault(make, 0.0) >= COUNTS;
    }

    /** The one that is more likely than not. */
    Optional<Model> best() {
        return models.entrySet().stream()
                .filter(m -> m.getValue() > MORE_LIKELY_THAN_NOT)
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
