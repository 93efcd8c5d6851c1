package hornbook.indexer.search;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.indexer.index.ShopIndex;
import hornbook.indexer.index.Shops;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds the quality reached on the judged queries, over shipped knowledge alone. */
class JudgedQualityTest {
    @TempDir
    Path folder;

    @Test
    void answersTheJudgedQueriesAsWellAsItDid() {
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            Judgements.Score score = Judgements.read().score(new Search(index), Judgements.KNOWLEDGE, "");
            assertThat(score.queries()).isEqualTo(80);
            assertThat(score.first2()).as(score.toString()).isGreaterThanOrEqualTo(0.90);
            assertThat(score.firstAny()).as(score.toString()).isGreaterThanOrEqualTo(0.93);
            assertThat(score.ndcg()).as(score.toString()).isGreaterThanOrEqualTo(0.85);
        }
    }

    @Test
    void knowsABadAnswerWhenItSeesOne() {
        try (Books books = Shops.open(folder);
                ShopIndex index = Shops.index(books)) {
            assertThat(Judgements.read()
                            .score(new Search(index), Set.of("caution"), "")
                            .ndcg())
                    .isLessThan(0.1);
        }
    }
}
