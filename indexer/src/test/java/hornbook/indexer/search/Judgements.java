package hornbook.indexer.search;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Queries with graded answers (3 what was asked for, 2 helps, 1 beside it), by a repairer, from memory: the project's
 * own trade notes.
 */
public record Judgements(Map<String, Map<String, Integer>> grades, Map<String, String> sorts) {
    public static final Set<String> KNOWLEDGE = Set.of(
            "trait", "quirk", "fault", "part", "supply", "tool", "operation", "task", "finding", "caution", "word");

    public static Judgements read() {
        Map<String, Map<String, Integer>> grades = new LinkedHashMap<>();
        Map<String, String> sorts = new LinkedHashMap<>();
        try (InputStream in = Objects.requireNonNull(Judgements.class.getResourceAsStream("judgements.csv"));
                CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(in)) {
            for (NamedCsvRecord row : rows) {
                String query = row.getField("query");
                grades.computeIfAbsent(query, q -> new LinkedHashMap<>())
                        .put(row.getField("id"), Integer.parseInt(row.getField("grade")));
                sorts.putIfAbsent(query, row.getField("why").split(":")[0]);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Judgements(grades, sorts);
    }

    /** How good the answers are: shares of queries whose first hit has grade 3, 2 or more, any; nDCG of the first ten. */
    public record Score(int queries, double first3, double first2, double firstAny, double ndcg) {
        @Override
        public String toString() {
            return "%3d queries: first hit grade 3 %.3f, 2+ %.3f, any %.3f; nDCG@10 %.3f"
                    .formatted(queries, first3, first2, firstAny, ndcg);
        }
    }

    public Map<String, Double> ndcg(Search search, Set<String> kinds) {
        Map<String, Double> each = new LinkedHashMap<>();
        grades.forEach((query, graded) -> each.put(query, ndcg(ids(search, query, kinds), graded)));
        return each;
    }

    public Score score(Search search, Set<String> kinds, String sort) {
        double[] sum = new double[5];
        grades.forEach((query, graded) -> {
            if (sort.isEmpty() || sort.equals(sorts.get(query))) {
                List<String> found = ids(search, query, kinds);
                int first = found.isEmpty() ? 0 : graded.getOrDefault(found.getFirst(), 0);
                sum[0]++;
                sum[1] += first >= 3 ? 1 : 0;
                sum[2] += first >= 2 ? 1 : 0;
                sum[3] += first >= 1 ? 1 : 0;
                sum[4] += ndcg(found, graded);
            }
        });
        return new Score((int) sum[0], sum[1] / sum[0], sum[2] / sum[0], sum[3] / sum[0], sum[4] / sum[0]);
    }

    public static List<String> ids(Search search, String query, Set<String> kinds) {
        return search.find(new Question(query, 10, kinds)).hits().stream()
                .map(Hit::id)
                .toList();
    }

    /** Discounted gain over the best possible, with gain 2^grade − 1 (Järvelin and Kekäläinen 2002, Burges 2005). */
    static double ndcg(List<String> found, Map<String, Integer> graded) {
        List<Integer> got = new ArrayList<>();
        found.forEach(id -> got.add(graded.getOrDefault(id, 0)));
        List<Integer> best = new ArrayList<>(graded.values());
        best.sort((a, b) -> b - a);
        return gain(got) / gain(best);
    }

    private static double gain(List<Integer> grades) {
        double sum = 0;
        for (int i = 0; i < Math.min(10, grades.size()); i++) {
            sum += (Math.pow(2, grades.get(i)) - 1) / (Math.log(i + 2) / Math.log(2));
        }
        return sum;
    }
}
