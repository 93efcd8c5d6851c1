package hornbook.catalogue.identify;

import hornbook.catalogue.entry.EntryReader;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Trait;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A table of rows with a class in the last column, its classes as entries and its columns as looks that never miss. */
final class Lens {
    private final List<String> names;
    private final List<String[]> rows = new ArrayList<>();
    private final List<String> classes;

    Lens(String header, String... rows) {
        this.names = Arrays.asList(header.split(" "));
        for (String row : rows) {
            this.rows.add(row.split(" "));
        }
        this.classes = values(names.size() - 1);
    }

    List<String[]> rows() {
        return rows;
    }

    int entry(String name) {
        return classes.indexOf(name);
    }

    private List<String> values(int column) {
        return rows.stream().map(r -> r[column]).distinct().toList();
    }

    /** Share of each class, each counted that much more often than it is. */
    double[] prior(double more) {
        double all = rows.size() + more * classes.size();
        return classes.stream()
                .mapToDouble(c -> (rows.stream().filter(r -> last(r).equals(c)).count() + more) / all)
                .toArray();
    }

    private static String last(String[] row) {
        return row[row.length - 1];
    }

    /** A column as evidence, every value of every class counted that much more often than it is. */
    ChoiceEvidence evidence(String name, double more) {
        int column = names.indexOf(name);
        List<String> values = values(column);
        Misses misses = new Misses(trait(name, values), false);
        double[][] shares = new double[classes.size()][];
        for (int c = 0; c < shares.length; c++) {
            String own = classes.get(c);
            Map<String, Double> counts = new LinkedHashMap<>();
            values.forEach(v -> counts.put(v, more));
            rows.stream().filter(r -> last(r).equals(own)).forEach(r -> counts.merge(r[column], 1.0, Double::sum));
            shares[c] = ChoiceEvidence.shares(counts, values);
        }
        return new ChoiceEvidence(trait(name, values), misses, shares, Teaching.NONE);
    }

    private static Trait trait(String id, List<String> values) {
        String list = values.stream()
                .map(v -> "{\"id\": \"" + v + "\", \"description\": \"" + v + "\"}")
                .collect(Collectors.joining(", "));
        return (Trait) new EntryReader().read(Kind.TRAIT, """
                {"id": "%s", "title": "x", "question": "x", "kind": "one", "group": "x", "values": [%s], "look": "x",
                 "cost": "glance", "miss": 0, "uses": ["ID"], "modelled": true, "source": "x", "sureness": "x"}""".formatted(id, list));
    }

    /** Bits that each column tells of the class. */
    double gain(String name) {
        return LookMatrix.of(List.of(evidence(name, 0)), classes.size()).gains(prior(0))[0];
    }

    /** Share of each value of a column over all rows. */
    double[] marginal(String name) {
        LookMatrix matrix = LookMatrix.of(List.of(evidence(name, 0)), classes.size());
        return matrix.answers(matrix.product(prior(0)), 0);
    }

    double[] posterior(double onShares, double onPrior, String... looks) {
        List<Piece> pieces = new ArrayList<>();
        for (String look : looks) {
            String[] part = look.split("=");
            ChoiceEvidence evidence = evidence(part[0], onShares);
            Seen seen = new Seen.OneOf(part[0], List.of(part[1]));
            double[] logs = new double[classes.size()];
            for (int e = 0; e < logs.length; e++) {
                logs[e] = Math.log(evidence.likelihood(e, List.of(seen), null));
            }
            pieces.add(new Piece(look, part[0], logs));
        }
        return Scales.posterior(prior(onPrior), pieces);
    }

    /** Rows whose class is likeliest by the rest of the row. */
    long right(double more) {
        return rows.stream()
                .filter(row -> {
                    String[] looks = new String[row.length - 1];
                    for (int i = 0; i < looks.length; i++) {
                        looks[i] = names.get(i) + "=" + row[i];
                    }
                    double[] p = posterior(more, more, looks);
                    return Arrays.stream(p).max().orElseThrow() == p[entry(last(row))];
                })
                .count();
    }
}
