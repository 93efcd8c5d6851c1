package hornbook.shared.store.bench;

import hornbook.shared.exchange.Import;
import hornbook.shared.exchange.NoKnowledge;
import hornbook.shared.shop.Movement;
import hornbook.shared.store.Access;
import hornbook.shared.store.Backup;
import hornbook.shared.store.Books;
import hornbook.shared.store.Check;
import hornbook.shared.store.SafeFiles;
import hornbook.shared.store.SmallShop;
import java.io.BufferedWriter;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.Arrays;

/** What the books cost, each as a ratio to a peer in the same run, in turn: min, median and max over the rounds. */
public final class Speeds {
    private static final int ROUNDS = 5;

    private Speeds() {}

    private interface Work {
        void run(int round) throws Exception;
    }

    private static double seconds(Work work, int round) throws Exception {
        long begin = System.nanoTime();
        work.run(round);
        return (System.nanoTime() - begin) / 1e9;
    }

    private static void ratio(String what, Work subject, Work peer) throws Exception {
        double[] ratios = new double[ROUNDS];
        double[] ours = new double[ROUNDS];
        double[] theirs = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            theirs[i] = seconds(peer, i);
            ours[i] = seconds(subject, i);
            ratios[i] = ours[i] / theirs[i];
        }
        System.out.printf(
                "%s: %s times the peer (ours %s s, peer %s s)%n", what, spread(ratios), spread(ours), spread(theirs));
    }

    private static String spread(double[] values) {
        Arrays.sort(values);
        return String.format("%.4g / %.4g / %.4g", values[0], values[values.length / 2], values[values.length - 1]);
    }

    private static void write(Path folder) throws Exception {
        try (Books books = SmallShop.in(folder.resolve("write"));
                FileChannel log =
                        FileChannel.open(folder.resolve("log"), StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
            int each = 300;
            ratio(
                    "one write, durable (4 KiB append and fsync)",
                    round -> {
                        for (int i = 0; i < each; i++) {
                            books.write("stock", w -> w.put(SmallShop.move(w.nextId(Movement.class), 1)));
                        }
                    },
                    round -> {
                        for (int i = 0; i < each; i++) {
                            log.write(ByteBuffer.allocate(4096));
                            log.force(false);
                        }
                    });
        }
    }

    private static Path movements(Path folder, int n) throws Exception {
        Path given = Files.createDirectories(folder.resolve("given"));
        try (BufferedWriter out = Files.newBufferedWriter(given.resolve("movements.csv"))) {
            out.write("id,date,lot,kind,qty,job,supplier,order_ref,ordered_on,unit_price,note\n");
            for (int i = 1; i <= n; i++) {
                out.write(String.format("v-%07d,2026-01-%02d,lot-%04d,use,-1,,,,,,%n", i, 1 + i % 28, 1 + i % 50));
            }
        }
        return given;
    }

    private static Path shop(Path folder, String name) {
        Path shop = folder.resolve(name);
        try (Books books = SmallShop.in(shop)) {
            books.write("lots", w -> {
                for (int i = 2; i <= 50; i++) {
                    w.put(SmallShop.lot(String.format("lot-%04d", i), "d-1"));
                }
            });
        }
        return shop;
    }

    private static Connection plain(Path file) throws Exception {
        return DriverManager.getConnection("jdbc:sqlite:" + file);
    }

    private static void bare(Path shop, int n) throws Exception {
        try (Connection sql = plain(shop.resolve("shop.db"))) {
            sql.createStatement().execute("pragma synchronous = full");
            sql.setAutoCommit(false);
            try (PreparedStatement insert = sql.prepareStatement(
                    "insert into movement (id, date, lot, kind, qty, note) values (?, ?, ?, 'use', -1, '')")) {
                for (int i = 1; i <= n; i++) {
                    insert.setString(1, String.format("v-%07d", i));
                    insert.setString(2, String.format("2026-01-%02d", 1 + i % 28));
                    insert.setString(3, String.format("lot-%04d", 1 + i % 50));
                    insert.addBatch();
                    if (i % 1000 == 0) {
                        insert.executeBatch();
                    }
                }
                insert.executeBatch();
            }
            sql.commit();
        }
    }

    private static void imports(Path folder, int n) throws Exception {
        Path given = movements(folder, n);
        ratio(
                "import of " + n + " rows (bare batch insert into the same table)",
                round -> {
                    try (Books books = Books.open(shop(folder, "import" + round), Access.WRITE)) {
                        if (new Import(books, new NoKnowledge())
                                        .from(given, false)
                                        .taken()
                                != n) {
                            throw new IllegalStateException("not all taken");
                        }
                    }
                },
                round -> bare(shop(folder, "bare" + round), n));
    }

    private static void large(Path folder, int n) throws Exception {
        Path shop = shop(folder, "large");
        try (Books books = Books.open(shop, Access.WRITE)) {
            new Import(books, new NoKnowledge()).from(movements(folder, n), false);
        }
        Path file = shop.resolve("shop.db");
        System.out.println(n + " movements: " + Files.size(file) / 1_000_000 + " MB");
        ratio(
                "check of " + n + " movements (integrity_check alone, 16 MB cache)",
                round -> {
                    if (!new Check(shop).run().ok()) {
                        throw new IllegalStateException("not ok");
                    }
                },
                round -> {
                    try (Connection sql = plain(file);
                            Statement statement = sql.createStatement()) {
                        statement.execute("pragma cache_size = -16384");
                        try (ResultSet row = statement.executeQuery("pragma integrity_check")) {
                            row.next();
                        }
                    }
                });
        ratio("backup of it, checked (file copy and fsync)", round -> new Backup(shop).make(SmallShop.DAY), round -> {
            Path copy = folder.resolve("copy");
            Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
            SafeFiles.sync(copy);
        });
    }

    public static void main(String[] given) throws Exception {
        Arguments arguments = Arguments.of(given);
        Path folder = Files.createTempDirectory("speeds");
        write(folder);
        imports(folder, arguments.n(100_000));
        large(folder, Integer.parseInt(arguments.text("movements", "1000000")));
    }
}
