package hornbook.indexer.index;

import hornbook.indexer.search.Question;
import hornbook.indexer.search.Search;
import hornbook.shared.store.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.store.FSDirectory;

/**
 * Flips a bit of one file of the index, or cuts it short, and looks whether what is left is taken for whole:
 * {@code --n 1000 --seed 7 --open-every 50}. Control: what Lucene's own opening would take, which reads no checksum of
 * what it does not touch.
 */
public final class IndexDamageTrial {
    private static final String[] QUERIES = {"roller", "snap-on disc 19", "g# stuck", "3-48", "neck cork"};

    /**
     * What came of it.
     *
     * @param trusted damaged indexes taken for whole: none may be
     * @param unnoticed what the control took for whole
     * @param wrong answers of an opened shop that were not those of before
     */
    public record Outcome(int trials, int trusted, int unnoticed, int opened, List<String> wrong) {}

    public static void main(String[] line) throws Exception {
        List<String> words = List.of(line);
        Path folder = Files.createTempDirectory("index-damage");
        System.out.println(
                run(folder, number(words, "--n", 1000), number(words, "--seed", 7), number(words, "--open-every", 50)));
        System.exit(0);
    }

    static int number(List<String> words, String name, int otherwise) {
        int at = words.indexOf(name);
        return at < 0 ? otherwise : Integer.parseInt(words.get(at + 1));
    }

    /** @param openEvery each so manieth is opened and asked as well, which takes a second */
    static Outcome run(Path folder, int trials, long seed, int openEvery) throws Exception {
        Random random = new Random(seed);
        List<String> before = furnished(folder.resolve("shop"));
        Path index = folder.resolve("shop/index");
        Path whole = copy(index, folder.resolve("whole"));
        int trusted = 0;
        int unnoticed = 0;
        int opened = 0;
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < trials; i++) {
            copy(whole, index);
            String what = damage(index, random);
            trusted += new IndexFolder(index).trusted().isPresent() ? 1 : 0;
            unnoticed += opens(index) ? 1 : 0;
            if (i % openEvery == 0) {
                opened++;
                if (!answers(folder.resolve("shop")).equals(before)) {
                    wrong.add(what);
                }
            }
        }
        return new Outcome(trials, trusted, unnoticed, opened, wrong);
    }

    private static List<String> furnished(Path shop) {
        try (Books books = Shops.open(shop)) {
            Shops.furnish(books);
        }
        return answers(shop);
    }

    private static List<String> answers(Path shop) {
        try (Books books = Shops.open(shop);
                ShopIndex index = Shops.index(books)) {
            List<String> answers = new ArrayList<>();
            for (String query : QUERIES) {
                new Search(index).find(Question.of(query)).hits().forEach(hit -> answers.add(hit.toString()));
            }
            return answers;
        }
    }

    private static String damage(Path index, Random random) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(index)) {
            files = all.filter(file -> file.toFile().length() > 0).sorted().toList();
        }
        Path file = files.get(random.nextInt(files.size()));
        byte[] bytes = Files.readAllBytes(file);
        int at = random.nextInt(bytes.length);
        if (random.nextInt(4) == 0) {
            Files.write(file, java.util.Arrays.copyOf(bytes, at));
            return file.getFileName() + " cut at " + at;
        }
        bytes[at] ^= (byte) (1 << random.nextInt(8));
        Files.write(file, bytes);
        return file.getFileName() + " flipped at " + at;
    }

    private static boolean opens(Path index) {
        try (FSDirectory directory = FSDirectory.open(index);
                DirectoryReader reader = DirectoryReader.open(directory)) {
            return reader.numDocs() > 0;
        } catch (IOException | RuntimeException e) {
            return false;
        }
    }

    private static Path copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        new IndexFolder(to).empty();
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
        return to;
    }
}
