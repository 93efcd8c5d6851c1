package hornbook.indexer.bench;

import hornbook.indexer.index.DemoShop;
import hornbook.indexer.index.ShopIndex;
import hornbook.indexer.index.Shops;
import hornbook.indexer.search.Hit;
import hornbook.indexer.search.Judgements;
import hornbook.indexer.search.Question;
import hornbook.indexer.search.Search;
import hornbook.shared.store.Books;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Quality of the search on the judged queries: {@code [--demo] [--show] [QUERY…]}. */
public final class QualityBench {
    private final Search search;
    private final Set<String> kinds;
    private final Judgements judged = Judgements.read();

    private QualityBench(Search search, Set<String> kinds) {
        this.search = search;
        this.kinds = kinds;
    }

    public static void main(String[] args) throws Exception {
        List<String> words = List.of(args);
        boolean demo = words.contains("--demo");
        Path folder = Files.createTempDirectory("quality");
        try (Books books = demo ? DemoShop.open(folder) : Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            List<String> queries =
                    words.stream().filter(w -> !w.startsWith("--")).toList();
            QualityBench bench = new QualityBench(new Search(index), Judgements.KNOWLEDGE);
            if (!queries.isEmpty()) {
                queries.forEach(query -> bench.show(query, demo ? Set.of() : Judgements.KNOWLEDGE));
                return;
            }
            bench.figures();
            if (words.contains("--show")) {
                bench.worst();
            }
        }
    }

    private void figures() {
        for (String sort : new TreeSet<>(judged.sorts().values())) {
            System.out.printf("%-14s %s%n", sort, judged.score(search, kinds, sort));
        }
        System.out.printf("%-14s %s%n", "all", judged.score(search, kinds, ""));
    }

    private void worst() {
        judged.ndcg(search, kinds).entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .limit(50)
                .forEach(query -> {
                    System.out.printf(
                            "%n%.2f %s   %s%n",
                            query.getValue(), query.getKey(), judged.grades().get(query.getKey()));
                    show(query.getKey(), kinds);
                });
    }

    private void show(String query, Set<String> of) {
        System.out.println("> " + query);
        Map<String, Integer> grades = judged.grades().getOrDefault(query, Map.of());
        for (Hit hit : search.find(new Question(query, 10, of)).hits()) {
            System.out.printf(
                    "   %s %.2f %s | %s | %s %s %s | %s%n",
                    grades.getOrDefault(hit.id(), 0),
                    hit.score(),
                    hit.id(),
                    hit.title(),
                    hit.drawer(),
                    hit.drawerLabel(),
                    hit.onHand(),
                    hit.why());
        }
    }
}
