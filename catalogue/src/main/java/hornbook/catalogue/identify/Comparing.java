package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Distribution;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Normal;
import hornbook.catalogue.entry.Shares;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Sets entries side by side. */
final class Comparing {
    private static final double DIFFER = 0.05;

    private final Standing standing;

    Comparing(Standing standing) {
        this.standing = standing;
    }

    Comparison compare(List<Integer> entries) {
        List<Evidence> evidence = List.copyOf(standing.evidence().values());
        LookMatrix matrix = LookMatrix.of(evidence, standing.posterior().length);
        double[] weights = new double[standing.posterior().length];
        entries.forEach(e -> weights[e] = 1.0 / entries.size());
        double[] gains = matrix.gains(weights);
        List<Comparison.Difference> differ = new ArrayList<>();
        int question = 0;
        for (Evidence one : evidence) {
            double bits = 0;
            for (int own = 0; own < one.outcomes().length; own++) {
                bits += gains[question++];
            }
            if (bits > DIFFER) {
                differ.add(difference(one, bits, entries));
            }
        }
        differ.sort(Comparator.comparingDouble(Comparison.Difference::bits).reversed());
        return new Comparison(differ, look(differ), new Oddities(standing).odd(entries));
    }

    private @org.jspecify.annotations.Nullable String look(List<Comparison.Difference> differ) {
        return differ.stream()
                .filter(d -> !standing.asked().contains(d.trait()))
                .max(Comparator.comparingDouble(this::worth))
                .map(Comparison.Difference::trait)
                .orElse(null);
    }

    private double worth(Comparison.Difference difference) {
        Evidence evidence = standing.evidence().get(difference.trait());
        return evidence == null
                ? 0
                : difference.bits() / evidence.trait().cost().cost();
    }

    private Comparison.Difference difference(Evidence evidence, double bits, List<Integer> entries) {
        String trait = evidence.trait().id();
        Map<String, String> values = new LinkedHashMap<>();
        for (int e : entries) {
            Model model = standing.models().get(e);
            Distribution stated = model.traits().get(trait);
            Map<String, Double> many = model.traitsMany().get(trait);
            if (stated != null) {
                values.put(model.id(), words(stated));
            } else if (many != null) {
                values.put(model.id(), shares(many));
            }
        }
        return new Comparison.Difference(trait, values, bits);
    }

    private static String words(Distribution stated) {
        return switch (stated) {
            case Normal(double mean, double sd) -> String.format(Locale.ROOT, "%.2f mm ± %.2f", mean, sd);
            case Shares(var of) -> shares(of);
        };
    }

    private static String shares(Map<String, Double> of) {
        return of.entrySet().stream()
                .filter(s -> s.getValue() > 0)
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(s -> s.getValue() >= 0.995
                        ? s.getKey()
                        : String.format(Locale.ROOT, "%s %.0f %%", s.getKey(), 100 * s.getValue()))
                .collect(Collectors.joining(", "));
    }
}
