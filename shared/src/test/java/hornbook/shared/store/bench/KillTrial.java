package hornbook.shared.store.bench;

import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.store.Access;
import hornbook.shared.store.Backup;
import hornbook.shared.store.Books;
import hornbook.shared.store.Check;
import hornbook.shared.store.Child;
import hornbook.shared.store.OldShop;
import hornbook.shared.store.SmallShop;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

/** Kills another process at any moment of its work, opens the shop after it, and looks for what was acknowledged. */
public final class KillTrial {
    private static final int CABINETS = 3000;

    private final String what;
    private final Path folder;
    private final Random random;
    private Path given;
    private int lots;

    private KillTrial(String what, Path folder, long seed) {
        this.what = what;
        this.folder = folder;
        this.random = new Random(seed);
        this.given = folder;
    }

    /** Kills, things acknowledged, and what was lost or wrong after them. */
    public record Outcome(String what, int kills, int acknowledged, List<String> wrong) {}

    public static Outcome run(String what, Path folder, int n, long seed) throws Exception {
        KillTrial trial = new KillTrial(what, folder, seed);
        List<String> wrong = new java.util.ArrayList<>();
        int acknowledged = 0;
        for (int i = 0; i < n; i++) {
            Path shop = folder.resolve("shop-" + what + "-" + (what.equals("writes") || what.equals("backup") ? 0 : i));
            trial.prepare(shop);
            List<String> heard = trial.kill(shop);
            acknowledged += heard.size();
            int kill = i;
            trial.problems(shop, heard).forEach(p -> wrong.add("kill " + kill + ": " + p));
        }
        return new Outcome(what, n, acknowledged, wrong);
    }

    private void prepare(Path shop) throws Exception {
        switch (what) {
            case "migration" -> OldShop.make(shop, 3000);
            case "import" -> {
                given = Files.createDirectories(folder.resolve("given"));
                StringBuilder rows = new StringBuilder("id,name,rows,columns,where,notes\n");
                for (int i = 0; i < CABINETS; i++) {
                    rows.append("c-").append(i).append(",Chest,2,2,,\n");
                }
                Files.writeString(given.resolve("cabinets.csv"), rows);
            }
            case "restore" -> {
                BusyShop.make(shop, 30, 1);
                given = new Backup(shop).make(SmallShop.DAY).file();
                try (Books books = Books.open(shop, Access.WRITE)) {
                    books.write("later", w -> w.put(SmallShop.lot("lot-9999", "d-1")));
                    lots = books.all(Lot.class).size();
                }
            }
            default -> {
                if (!Books.in(shop)) {
                    BusyShop.make(shop, 100, 1);
                }
            }
        }
    }

    private List<String> kill(Path shop) throws Exception {
        Process child = Child.start(KilledWriter.class, what, shop.toString(), given.toString());
        List<String> heard = new java.util.ArrayList<>();
        try (BufferedReader out = new BufferedReader(new InputStreamReader(child.getInputStream()))) {
            out.readLine();
            Thread.sleep(random.nextInt(1_500));
            // By its handle: destroying the process object drops the last lines it said.
            child.toHandle().destroyForcibly();
            out.lines().forEach(heard::add);
        }
        child.waitFor();
        return heard;
    }

    private List<String> problems(Path shop, List<String> heard) {
        List<String> wrong = new java.util.ArrayList<>();
        try (Books books = Books.open(shop, Access.WRITE)) {
            for (String line : heard) {
                if (line.startsWith("wrote ")
                        && books.find(Movement.class, line.substring(6)).isEmpty()) {
                    wrong.add("lost " + line);
                }
                if (line.startsWith("backup ") && !Files.exists(Path.of(line.substring(7)))) {
                    wrong.add("lost " + line);
                }
            }
            int cabinets = books.all(hornbook.shared.shop.Cabinet.class).size();
            if (what.equals("import") && cabinets != 0 && cabinets != CABINETS) {
                wrong.add("half an import: " + cabinets);
            }
            int now = books.all(Lot.class).size();
            if (what.equals("restore") && now != lots && now != lots - 1) {
                wrong.add("half a restore: " + now);
            }
        } catch (RuntimeException e) {
            wrong.add(e.toString());
            return wrong;
        }
        new Check(shop).run().problems().forEach(p -> wrong.add(p.line()));
        if (what.equals("backup") && Backup.lastGood(shop).isEmpty() && !heard.isEmpty()) {
            wrong.add("no good backup");
        }
        return wrong;
    }

    public static void main(String[] given) throws Exception {
        Arguments arguments = Arguments.of(given);
        Path folder = Files.createTempDirectory("kills");
        for (String what :
                arguments.text("what", "writes,import,backup,restore,migration").split(",")) {
            System.out.println(
                    "seed " + arguments.seed() + ": " + run(what, folder, arguments.n(100), arguments.seed()));
        }
    }
}
