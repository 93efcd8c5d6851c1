package hornbook.indexer.bench;

import hornbook.catalogue.entry.Catalogue;
import hornbook.indexer.index.ShopIndex;
import hornbook.indexer.search.Judgements;
import hornbook.indexer.search.Question;
import hornbook.indexer.search.Search;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;

/** Quality of the search on the judged queries: {@code [--show] [--shop DIR] [QUERY]}. */
public final class QualityBench {
    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("quality");
        boolean show = Set.of(args).contains("--show");
        try (Books books = Books.open(folder, Access.WRITE)) {
            long start = System.nanoTime();
            try (ShopIndex index = ShopIndex.open(
                    books,
                    () -> Catalogue.open(folder.resolve("entries")),
                    StandardSizes.load().reader())) {
                System.out.printf("opened in %.2f s%n", (System.nanoTime() - start) / 1e9);
                Search search = new Search(index);
                Judgements judged = Judgements.read();
                for (String sort : new TreeSet<>(judged.sorts().values())) {
                    System.out.printf("%-14s %s%n", sort, judged.score(search, Judgements.KNOWLEDGE, sort));
                }
                System.out.printf("%-14s %s%n", "all", judged.score(search, Judgements.KNOWLEDGE, ""));
                if (show) {
                    show(search, judged);
                }
            }
        }
    }

    private static void show(Search search, Judgements judged) {
        judged.ndcg(search, Judgements.KNOWLEDGE).entrySet().stream()
                .sorted(java.util.Map.Entry.comparingByValue())
                .limit(45)
                .forEach(query -> {
                    System.out.printf(
                            "%n%.2f %s   %s%n",
                            query.getValue(), query.getKey(), judged.grades().get(query.getKey()));
                    search.find(new Question(query.getKey(), 10, Judgements.KNOWLEDGE))
                            .hits()
                            .forEach(hit -> System.out.printf(
                                    "   %s %.2f %s | %s | %s%n",
                                    judged.grades().get(query.getKey()).getOrDefault(hit.id(), 0),
                                    hit.score(),
                                    hit.id(),
                                    hit.title(),
                                    hit.why()));
                });
    }
}
