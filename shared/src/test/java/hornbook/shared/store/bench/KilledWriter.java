package hornbook.shared.store.bench;

import hornbook.shared.exchange.Import;
import hornbook.shared.exchange.NoKnowledge;
import hornbook.shared.shop.Movement;
import hornbook.shared.store.Access;
import hornbook.shared.store.Backup;
import hornbook.shared.store.Books;
import hornbook.shared.store.Restore;
import hornbook.shared.store.SmallShop;
import java.nio.file.Files;
import java.nio.file.Path;

/** Does one thing over and over until it is killed, and tells of each when it is done. */
public final class KilledWriter {
    private KilledWriter() {}

    public static void main(String[] arguments) throws Exception {
        Path shop = Path.of(arguments[1]);
        // Loads what a first opening loads, so that the kill falls into the work and not before it.
        SmallShop.in(Files.createTempDirectory("warm")).close();
        System.out.println("begin");
        System.out.flush();
        for (int i = 0; i < 100_000; i++) {
            String done = once(arguments[0], shop, Path.of(arguments[2]));
            System.out.println(done);
            System.out.flush();
        }
    }

    private static String once(String what, Path shop, Path given) {
        return switch (what) {
            case "writes" -> write(shop);
            case "import" -> {
                try (Books books = Books.open(shop, Access.WRITE)) {
                    yield "import "
                            + new Import(books, new NoKnowledge())
                                    .from(given, false)
                                    .taken();
                }
            }
            case "backup" -> "backup " + new Backup(shop).make(SmallShop.DAY).file();
            case "restore" -> "restore " + new Restore(shop).from(given).files();
            case "migration" -> {
                Books.open(shop, Access.WRITE).close();
                yield "migration";
            }
            default -> throw new IllegalArgumentException(what);
        };
    }

    private static String write(Path shop) {
        try (Books books = Books.open(shop, Access.WRITE)) {
            String[] id = {""};
            for (int i = 0; i < 20; i++) {
                books.write("stock", w -> {
                    id[0] = w.nextId(Movement.class);
                    w.put(SmallShop.move(id[0], 1));
                    w.entry("model/m-1.json", "{\"last\":\"" + id[0] + "\"}");
                });
                System.out.println("wrote " + id[0]);
                System.out.flush();
            }
            return "closed";
        }
    }
}
