package hornbook.indexer.search;

import hornbook.indexer.bench.LifelikeShop;
import hornbook.indexer.index.ShopIndex;
import hornbook.indexer.index.Shops;
import hornbook.indexer.index.Terms;
import hornbook.indexer.index.View;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Size;
import hornbook.shared.measure.SizeMention;
import hornbook.shared.shop.Lot;
import hornbook.shared.store.Books;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.apache.lucene.document.LongPoint;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TermQuery;

/**
 * Lots of a size within tolerance: the same as a scan of every lot's dimensions finds, and what it takes against a bare
 * range of points: {@code [RECORDS] [QUERIES]}.
 */
public final class SizesBench {
    private static final long SEED = 20260930;

    private SizesBench() {}

    public static void main(String[] line) throws Exception {
        int records = line.length > 0 ? Integer.parseInt(line[0]) : 50_000;
        int queries = line.length > 1 ? Integer.parseInt(line[1]) : 200;
        try (Books books = LifelikeShop.open(Files.createTempDirectory("sizes-bench"), records, SEED);
                ShopIndex index = Shops.index(books)) {
            List<Sized> all = sized(books);
            Random random = new Random(SEED);
            int unequal = 0;
            double ratio = 0;
            for (int i = 0; i < queries; i++) {
                Length asked = all.get(random.nextInt(all.size())).size().low();
                Measured size = Measured.single(
                        Length.ofMillimetres(String.format(Locale.ROOT, "%.2f", asked.nanometres() / 1e6)));
                unequal += index.ask(view -> found(view, size)).equals(scan(all, size)) ? 0 : 1;
                ratio += index.ask(view -> ratio(view, size)) / queries;
            }
            System.out.printf(
                    Locale.ROOT,
                    "%d lots with sizes, %d queries: %d unlike the scan; %.2f times a bare range of points%n",
                    all.size(),
                    queries,
                    unequal,
                    ratio);
        }
        System.exit(0);
    }

    private record Sized(String lot, Measured size) {}

    private static List<Sized> sized(Books books) {
        List<Sized> all = new ArrayList<>();
        for (Lot lot : books.all(Lot.class)) {
            List<String> written = new ArrayList<>(List.of(lot.title(), lot.note()));
            for (String piece : lot.dimensions().split(";")) {
                written.add(piece.substring(piece.indexOf('=') + 1));
            }
            for (String text : written) {
                for (SizeMention mention : Shops.SIZES.mentions(text)) {
                    if (mention.size() instanceof Size.Plain(Measured size)
                            && size.low().equals(size.high())) {
                        all.add(new Sized(lot.id(), size));
                    }
                }
            }
        }
        return all;
    }

    private static Set<String> scan(List<Sized> all, Measured asked) {
        Set<String> found = new TreeSet<>();
        for (Sized one : all) {
            if (new Size.Plain(one.size()).same(new Size.Plain(asked))) {
                found.add(one.lot());
            }
        }
        return found;
    }

    private static Set<String> found(View view, Measured asked) {
        Set<String> found = new TreeSet<>();
        for (ScoreDoc hit : hits(view, Way.size(asked, 1).query(1, new Vocabulary(view)))) {
            found.add(view.row(hit.doc).id());
        }
        return found;
    }

    private static ScoreDoc[] hits(View view, Query size) {
        Query lots = new BooleanQuery.Builder()
                .add(size, BooleanClause.Occur.MUST)
                .add(new TermQuery(new Term(Terms.TERM, Terms.kind("lot"))), BooleanClause.Occur.FILTER)
                .build();
        try {
            return view.searcher().search(lots, view.documents()).scoreDocs;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double ratio(View view, Measured asked) {
        long low = asked.low().minus(Size.TOLERANCE).nanometres();
        long high = asked.high().plus(Size.TOLERANCE).nanometres();
        double best = Double.MAX_VALUE;
        for (int i = 0; i < 5; i++) {
            long begin = System.nanoTime();
            hits(view, LongPoint.newRangeQuery(Terms.SIZE, low, high));
            long between = System.nanoTime();
            hits(view, Way.size(asked, 1).query(1, new Vocabulary(view)));
            best = Math.min(best, (double) (System.nanoTime() - between) / (between - begin));
        }
        return best;
    }
}
