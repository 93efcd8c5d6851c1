package hornbook.shared.store.bench;

import hornbook.shared.store.Check;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Flips bits in the books and cuts them off: is every changed content noticed? The control asks SQLite alone. */
public final class DamageTrial {
    private DamageTrial() {}

    /** How many changed what can be read, how many of these check noticed, and how many SQLite's own check. */
    public record Outcome(int trials, int changed, int noticed, int control) {}

    public static Outcome run(Path folder, int n, long seed) throws Exception {
        Path shop = folder.resolve("damaged");
        BusyShop.make(shop, 400, seed);
        Path file = shop.resolve("shop.db");
        byte[] good = Files.readAllBytes(file);
        String content = content(file);
        Random random = new Random(seed);
        int changed = 0;
        int noticed = 0;
        int control = 0;
        for (int i = 0; i < n; i++) {
            Files.write(file, damaged(good, random));
            if (!content.equals(content(file))) {
                changed++;
                boolean seen = !noProblems(shop);
                noticed += seen ? 1 : 0;
                control += integrity(file) ? 0 : 1;
                if (!seen) {
                    System.out.println("unnoticed in trial " + i);
                }
            }
        }
        Files.write(file, good);
        return new Outcome(n, changed, noticed, control);
    }

    private static byte[] damaged(byte[] good, Random random) {
        if (random.nextInt(10) == 0) {
            return java.util.Arrays.copyOf(good, 512 + random.nextInt(good.length - 512));
        }
        byte[] bad = good.clone();
        for (int flips = random.nextInt(3); flips >= 0; flips--) {
            bad[random.nextInt(bad.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return bad;
    }

    private static boolean noProblems(Path shop) {
        try {
            return new Check(shop).run().ok();
        } catch (RuntimeException e) {
            return false;
        }
    }

    private static boolean integrity(Path file) {
        try (Connection sql = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = sql.createStatement();
                ResultSet row = statement.executeQuery("pragma integrity_check")) {
            return row.getString(1).equals("ok");
        } catch (Exception e) {
            return false;
        }
    }

    /** Everything a reader can get out of the file, or that it cannot be read. */
    private static String content(Path file) {
        StringBuilder all = new StringBuilder();
        try (Connection sql = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = sql.createStatement()) {
            List<String> tables = new ArrayList<>();
            try (ResultSet row = statement.executeQuery(
                    "select name from sqlite_schema where type = 'table' and name not like 'sqlite%' order by 1")) {
                while (row.next()) {
                    tables.add(row.getString(1));
                }
            }
            for (String table : tables) {
                rows(statement, table, all);
            }
            return all.toString();
        } catch (Exception e) {
            return "unreadable: " + all.length() + e.getMessage();
        }
    }

    private static void rows(Statement statement, String table, StringBuilder all) throws Exception {
        try (ResultSet row = statement.executeQuery("select * from \"" + table + "\" not indexed order by rowid")) {
            int columns = row.getMetaData().getColumnCount();
            while (row.next()) {
                for (int i = 1; i <= columns; i++) {
                    byte[] cell = row.getBytes(i);
                    all.append(cell == null ? "null" : new String(cell, java.nio.charset.StandardCharsets.ISO_8859_1))
                            .append('|');
                }
            }
        }
    }

    public static void main(String[] given) throws Exception {
        Arguments arguments = Arguments.of(given);
        System.out.println("seed " + arguments.seed() + ": "
                + run(Files.createTempDirectory("damage"), arguments.n(1000), arguments.seed()));
    }
}
