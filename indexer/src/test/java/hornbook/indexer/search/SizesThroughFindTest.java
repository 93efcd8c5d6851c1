package hornbook.indexer.search;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.indexer.index.ShopIndex;
import hornbook.indexer.index.Shops;
import hornbook.shared.measure.Size;
import hornbook.shared.measure.SizeMention;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No false friends: a size finds a lot through {@code find} exactly if the size matcher calls the two the same. */
class SizesThroughFindTest {
    private static final int PAIRS = 5_000;
    private static final long SEED = 348;

    @TempDir
    Path folder;

    /** Threads of the standards' table, number drills, hundredths of a millimetre, sixty-fourths and thou. */
    private static List<String> writings() {
        List<String> all = new ArrayList<>();
        StandardSizes.load().threads().threads().forEach(thread -> all.add(thread.designation()));
        for (int i = 1; i <= 80; i++) {
            all.add("#" + i + " drill");
            all.add((i % 63 + 1) + "/64\"");
            all.add("." + (i + 20 < 100 ? "0" : "") + (i + 20) + "\"");
            all.add(String.format(java.util.Locale.ROOT, "%.2f mm", 0.5 + i * 0.13));
        }
        return all.stream().filter(text -> size(text).isPresent()).toList();
    }

    private static Optional<Size> size(String text) {
        List<SizeMention> mentions = Shops.SIZES.mentions(text);
        return mentions.size() == 1 ? Optional.of(mentions.getFirst().size()) : Optional.empty();
    }

    @Test
    void seededPairsThroughFind() {
        List<String> writings = writings();
        assertThat(writings.size()).isGreaterThan(350);
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            Shops.furnish(books);
            books.write("one lot a size", w -> {
                for (int i = 0; i < writings.size(); i++) {
                    w.put(Shops.lot("lot-1%04d".formatted(i), "d-2", "part-x", "blank", "size=" + writings.get(i)));
                }
            });
            Search search = new Search(index);
            Random random = new Random(SEED);
            int same = 0;
            for (int i = 0; i < PAIRS / writings.size() + 1; i++) {
                for (int a = 0; a < writings.size(); a++) {
                    same += pairs(search, writings, a, random) ? 1 : 0;
                }
            }
            assertThat(same).as("pairs that are the same").isPositive();
        }
    }

    private final java.util.Map<Integer, Set<String>> found = new java.util.HashMap<>();

    private boolean pairs(Search search, List<String> writings, int a, Random random) {
        int b = random.nextInt(8) == 0 ? a : random.nextInt(writings.size());
        Set<String> ids = found.computeIfAbsent(
                a,
                i -> search.find(new Question(writings.get(i) + " ", 1000, Set.of("lot"))).hits().stream()
                        .map(Hit::id)
                        .collect(Collectors.toSet()));
        boolean same =
                size(writings.get(a)).orElseThrow().same(size(writings.get(b)).orElseThrow());
        assertThat(ids.contains("lot-1%04d".formatted(b)))
                .as(writings.get(a) + " finds " + writings.get(b))
                .isEqualTo(same);
        return same;
    }
}
