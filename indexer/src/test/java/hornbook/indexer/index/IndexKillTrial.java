package hornbook.indexer.index;

import hornbook.indexer.search.Hit;
import hornbook.indexer.search.Question;
import hornbook.indexer.search.Search;
import hornbook.shared.store.Books;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.Term;
import org.apache.lucene.store.Directory;

/**
 * Kills a process that adds lots and makes the index anew by turns, opens the shop after it, and looks for every lot
 * that was acknowledged: {@code --n 500 --seed 7}. Control: what the index on the disk has without the change feed.
 */
public final class IndexKillTrial {
    private IndexKillTrial() {}

    /**
     * What came of it.
     *
     * @param lost acknowledged and not found
     * @param different kills after which the index was not as one made anew
     * @param control acknowledged and not in the index as it lay on the disk
     */
    public record Outcome(int kills, int acknowledged, int lost, int different, int control) {}

    public static void main(String[] line) throws Exception {
        List<String> words = List.of(line);
        System.out.println(run(
                Files.createTempDirectory("index-kill"),
                IndexDamageTrial.number(words, "--n", 500),
                IndexDamageTrial.number(words, "--seed", 7)));
        System.exit(0);
    }

    static Outcome run(Path folder, int kills, long seed) throws Exception {
        Random random = new Random(seed);
        Outcome sum = new Outcome(kills, 0, 0, 0, 0);
        for (int i = 0; i < kills; i++) {
            Path shop = folder.resolve("shop-" + i);
            try (Books books = Shops.open(shop)) {
                Shops.furnish(books);
            }
            List<String> heard = kill(shop, random.nextInt(3_000));
            int behind = missing(shop, heard);
            try (Books books = Shops.open(shop);
                    ShopIndex index = Shops.index(books)) {
                Search search = new Search(index);
                int lost = (int) heard.stream()
                        .filter(id -> !ids(search, id).contains(id))
                        .count();
                List<String> caughtUp = ids(search, "roller");
                index.rebuild();
                boolean same = caughtUp.equals(ids(search, "roller"));
                sum = new Outcome(
                        kills,
                        sum.acknowledged + heard.size(),
                        sum.lost + lost,
                        sum.different + (same ? 0 : 1),
                        sum.control + behind);
            }
        }
        return sum;
    }

    private static List<String> ids(Search search, String text) {
        return search.find(Question.of(text)).hits().stream()
                .map(Hit::id)
                .sorted()
                .toList();
    }

    private static List<String> kill(Path shop, int after) throws Exception {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Killed.class.getName(),
                        shop.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<String> heard = new ArrayList<>();
        try (BufferedReader out = new BufferedReader(new InputStreamReader(child.getInputStream()))) {
            out.readLine();
            Thread.sleep(after);
            // By its handle: destroying the process object drops the last lines it said.
            child.toHandle().destroyForcibly();
            out.lines().forEach(heard::add);
        }
        child.waitFor();
        return heard;
    }

    private static int missing(Path shop, List<String> heard) {
        try (Directory directory = new IndexFolder(shop.resolve("index")).plain();
                DirectoryReader reader = DirectoryReader.open(directory)) {
            int missing = 0;
            for (String id : heard) {
                missing += reader.docFreq(new Term(Terms.ID, id)) == 0 ? 1 : 0;
            }
            return missing;
        } catch (IOException none) {
            return heard.size();
        }
    }

    /** The process that is killed: says the number of each lot once it is saved. */
    public static final class Killed {
        private Killed() {}

        public static void main(String[] line) {
            try (Books books = Shops.open(Path.of(line[0]));
                    ShopIndex index = Shops.index(books)) {
                System.out.println("begin");
                for (int i = 0; i < 100_000; i++) {
                    String id = "lot-8" + i;
                    books.write(
                            "more", w -> w.put(Shops.lot(id, "d-2", "part-roller", "roller, shell", "length=9 mm")));
                    System.out.println(id);
                    if (i % 7 == 6) {
                        index.rebuild();
                    }
                }
            }
        }
    }
}
