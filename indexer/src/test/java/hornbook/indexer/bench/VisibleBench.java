package hornbook.indexer.bench;

import hornbook.indexer.index.ShopIndex;
import hornbook.indexer.index.Shops;
import hornbook.indexer.search.Question;
import hornbook.indexer.search.Search;
import hornbook.shared.shop.Lot;
import hornbook.shared.store.Books;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.Term;
import org.apache.lucene.store.FSDirectory;

/**
 * From saving a changed lot to seeing it found, against a bare SQLite transaction with FULL and a Lucene commit, in
 * turn: {@code [--records 50000] [--rounds 5] [--edits 60]}.
 */
public final class VisibleBench {
    private static final long SEED = 20260930;

    private final Options options;
    private final Random random = new Random(SEED);

    private VisibleBench(Options options) {
        this.options = options;
    }

    public static void main(String[] line) throws Exception {
        new VisibleBench(Options.of(line)).run();
        System.exit(0);
    }

    private interface Edit {
        void one(Lot lot, int number) throws Exception;
    }

    private void run() throws Exception {
        Path folder = Files.createTempDirectory("visible-bench");
        int records = options.number("records", 50_000);
        try (Books books = LifelikeShop.open(folder.resolve("shop"), records, SEED);
                ShopIndex index = Shops.index(books);
                Connection bare = bare(folder.resolve("bare.db"), books)) {
            Search search = new Search(index);
            PlainLucene.build(folder.resolve("lucene"), new Texts(books));
            try (FSDirectory directory = FSDirectory.open(folder.resolve("lucene"));
                    IndexWriter writer = new IndexWriter(directory, new IndexWriterConfig(new StandardAnalyzer()));
                    PreparedStatement update = bare.prepareStatement("update lot set note = ? where id = ?")) {
                Edit ours = (lot, number) -> {
                    books.write("note", w -> w.put(lot.withNote("mark" + number)));
                    if (search.find(Question.of("mark" + number)).hits().isEmpty()) {
                        throw new IllegalStateException("saved and not visible: " + lot.id());
                    }
                };
                Edit transaction = (lot, number) -> {
                    update.setString(1, "mark" + number);
                    update.setString(2, lot.id());
                    update.executeUpdate();
                };
                Edit commit = (lot, number) -> {
                    var changed = new Texts.One(lot.id(), lot.title(), lot.title() + " mark" + number);
                    writer.updateDocument(new Term("id", lot.id()), PlainLucene.document(changed));
                    writer.commit();
                };
                report(books.all(Lot.class), records, ours, transaction, commit);
            }
        }
    }

    private static Connection bare(Path file, Books books) throws Exception {
        Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        try (Statement statement = connection.createStatement()) {
            statement.execute("pragma journal_mode = wal");
            statement.execute("pragma synchronous = full");
            statement.execute("create table lot (id text primary key, title text, note text) strict");
        }
        connection.setAutoCommit(false);
        try (PreparedStatement insert = connection.prepareStatement("insert into lot values (?, ?, '')")) {
            for (Lot lot : books.all(Lot.class)) {
                insert.setString(1, lot.id());
                insert.setString(2, lot.title());
                insert.executeUpdate();
            }
        }
        connection.commit();
        connection.setAutoCommit(true);
        return connection;
    }

    private void report(List<Lot> lots, int records, Edit ours, Edit transaction, Edit commit) throws Exception {
        List<double[]> us = new ArrayList<>();
        List<double[]> sqlite = new ArrayList<>();
        List<double[]> lucene = new ArrayList<>();
        for (int round = -1; round < options.number("rounds", 5); round++) {
            double[][] took = {took(lots, ours), took(lots, transaction), took(lots, commit)};
            if (round >= 0) {
                us.add(took[0]);
                sqlite.add(took[1]);
                lucene.add(took[2]);
            }
        }
        System.out.printf(
                "%d records: saved to visible %s ms; times the transaction p50 %s, p99 %s; of a commit p50 %s%n",
                records, ratio(us, null, 0.5), ratio(us, sqlite, 0.5), ratio(us, sqlite, 0.99), ratio(us, lucene, 0.5));
    }

    private double[] took(List<Lot> lots, Edit edit) throws Exception {
        double[] took = new double[options.number("edits", 60)];
        for (int i = 0; i < took.length; i++) {
            Lot lot = lots.get(random.nextInt(lots.size()));
            int number = random.nextInt(1_000_000);
            long begin = System.nanoTime();
            edit.one(lot, number);
            took[i] = (System.nanoTime() - begin) / 1e6;
        }
        return took;
    }

    private static Spread ratio(List<double[]> ours, List<double[]> theirs, double share) {
        double[] ratios = new double[ours.size()];
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] = Spread.at(ours.get(i), share) / (theirs == null ? 1 : Spread.at(theirs.get(i), share));
        }
        return Spread.of(ratios);
    }
}
