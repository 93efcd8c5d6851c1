package hornbook.indexer.index;

import hornbook.catalogue.entry.Catalogue;
import hornbook.indexer.search.Hit;
import hornbook.indexer.search.Question;
import hornbook.indexer.search.Search;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.shared.store.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FilterDirectory;
import org.apache.lucene.store.FilterIndexOutput;
import org.apache.lucene.store.IOContext;
import org.apache.lucene.store.IndexOutput;

/**
 * Lets the disk run full after so many bytes of the index, while it is made or while lots are added: {@code --n 100
 * --seed 7}. One clear line or a saved deed, never both lost; with room again all is found. Control: what the index
 * alone would have kept.
 */
public final class FullDiskTrial {
    private FullDiskTrial() {}

    /**
     * What came of it.
     *
     * @param refused openings that said so in one line
     * @param lost lots that were saved and not found once there was room
     * @param control saved lots that the index on the disk had not
     */
    public record Outcome(int trials, int refused, int saved, int lost, int control) {}

    public static void main(String[] line) throws Exception {
        List<String> words = List.of(line);
        System.out.println(run(
                Files.createTempDirectory("full-disk"),
                IndexDamageTrial.number(words, "--n", 100),
                IndexDamageTrial.number(words, "--seed", 7)));
        System.exit(0);
    }

    static Outcome run(Path folder, int trials, long seed) {
        Random random = new Random(seed);
        Outcome sum = new Outcome(trials, 0, 0, 0, 0);
        for (int i = 0; i < trials; i++) {
            Path shop = folder.resolve("shop-" + i);
            try (Books books = Shops.open(shop)) {
                Shops.furnish(books);
            }
            boolean made = random.nextBoolean();
            if (made) {
                found(shop, List.of());
            }
            List<String> saved = new ArrayList<>();
            boolean refused = fill(shop, random.nextInt(made ? 60_000 : 1_200_000), saved);
            int behind = missing(shop, saved);
            int lost = saved.size() - found(shop, saved);
            sum = new Outcome(
                    trials,
                    sum.refused + (refused ? 1 : 0),
                    sum.saved + saved.size(),
                    sum.lost + lost,
                    sum.control + behind);
        }
        return sum;
    }

    /** Adds lots until well after the disk is full. */
    private static boolean fill(Path shop, long room, List<String> saved) {
        AtomicLong left = new AtomicLong(room);
        try (Books books = Shops.open(shop);
                ShopIndex index = ShopIndex.open(
                        books,
                        () -> Catalogue.open(shop.resolve("entries")),
                        () -> Shops.SIZES,
                        new IndexFolder(shop.resolve("index"), directory -> new Filling(directory, left)))) {
            for (int i = 0; i < 20; i++) {
                String id = "lot-7" + i;
                books.write("more", w -> w.put(Shops.lot(id, "d-2", "part-roller", "roller, shell", "length=9 mm")));
                saved.add(id);
            }
            return false;
        } catch (ShopUnavailable full) {
            return full.getMessage().contains("make room");
        }
    }

    private static int found(Path shop, List<String> saved) {
        try (Books books = Shops.open(shop);
                ShopIndex index = Shops.index(books)) {
            Search search = new Search(index);
            return (int) saved.stream()
                    .filter(id -> search.find(Question.of(id)).hits().stream()
                            .map(Hit::id)
                            .anyMatch(id::equals))
                    .count();
        }
    }

    /** How many of them the index on the disk has not; all where there is none to trust. */
    private static int missing(Path shop, List<String> saved) {
        IndexFolder files = new IndexFolder(shop.resolve("index"));
        if (files.trusted().isEmpty()) {
            return saved.size();
        }
        try (Directory directory = files.plain();
                var reader = org.apache.lucene.index.DirectoryReader.open(directory)) {
            int missing = 0;
            for (String id : saved) {
                missing += reader.docFreq(new org.apache.lucene.index.Term(Terms.ID, id)) == 0 ? 1 : 0;
            }
            return missing;
        } catch (IOException e) {
            return saved.size();
        }
    }

    /** A disk with so much room left. */
    private static final class Filling extends FilterDirectory {
        private final AtomicLong left;

        Filling(Directory in, AtomicLong left) {
            super(in);
            this.left = left;
        }

        @Override
        public IndexOutput createOutput(String name, IOContext context) throws IOException {
            return new Limited(super.createOutput(name, context));
        }

        @Override
        public IndexOutput createTempOutput(String prefix, String suffix, IOContext context) throws IOException {
            return new Limited(super.createTempOutput(prefix, suffix, context));
        }

        private final class Limited extends FilterIndexOutput {
            Limited(IndexOutput out) {
                super("limited " + out.getName(), out.getName(), out);
            }

            @Override
            public void writeByte(byte b) throws IOException {
                take(1);
                super.writeByte(b);
            }

            @Override
            public void writeBytes(byte[] b, int offset, int length) throws IOException {
                take(length);
                super.writeBytes(b, offset, length);
            }

            private void take(int bytes) throws IOException {
                if (left.addAndGet(-bytes) < 0) {
                    throw new IOException("No space left on device");
                }
            }
        }
    }
}
