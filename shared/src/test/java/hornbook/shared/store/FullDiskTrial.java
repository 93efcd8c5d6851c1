package hornbook.shared.store;

import hornbook.shared.shop.Movement;
import hornbook.shared.shop.ShopUnavailable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Lets the books run out of room at any moment: what was acknowledged stays, and work goes on once there is room. */
public final class FullDiskTrial {
    private FullDiskTrial() {}

    /** Times the disk was full, things acknowledged, and what was lost or said badly. */
    public record Outcome(int full, int acknowledged, List<String> wrong) {}

    public static Outcome run(Path folder, int n, long seed) throws Exception {
        Random random = new Random(seed);
        Path shop = folder.resolve("full");
        SmallShop.in(shop).close();
        List<String> wrong = new ArrayList<>();
        List<String> acknowledged = new ArrayList<>();
        int full = 0;
        for (int i = 0; i < n; i++) {
            Query query = new Query(Database.toWrite(shop.resolve(Opening.FILE)));
            long pages = query.number("pragma page_count");
            query.run("pragma max_page_count = " + (pages + random.nextInt(3)));
            try (Writer writer = new Writer(query, new EntryFiles(shop.resolve(Opening.ENTRIES)))) {
                for (int j = 0; j < 400; j++) {
                    String[] id = {""};
                    String note = "x".repeat(random.nextInt(2000));
                    try {
                        writer.write("stock", SmallShop.DAY, w -> {
                            id[0] = w.nextId(Movement.class);
                            w.put(SmallShop.move(id[0], 1));
                            w.setting("note", "\"" + note + "\"");
                        });
                        acknowledged.add(id[0]);
                    } catch (ShopUnavailable e) {
                        full++;
                        if (!String.valueOf(e.getMessage()).contains("disk is full")) {
                            wrong.add(e.getMessage());
                        }
                        break;
                    }
                }
                query.run("pragma max_page_count = 1000000");
                writer.write("room again", SmallShop.DAY, w -> w.setting("room", "\"" + note(random) + "\""));
            }
        }
        try (Books books = Books.open(shop, Access.READ)) {
            var ids = books.reading(view -> view.ids(Movement.class));
            acknowledged.stream().filter(id -> !ids.contains(id)).forEach(id -> wrong.add("lost " + id));
        }
        new Check(shop).run().problems().forEach(p -> wrong.add(p.line()));
        return new Outcome(full, acknowledged.size(), wrong);
    }

    private static int note(Random random) {
        return random.nextInt();
    }

    public static void main(String[] arguments) throws Exception {
        System.out.println(run(Files.createTempDirectory("full"), 100, 20260930));
    }
}
