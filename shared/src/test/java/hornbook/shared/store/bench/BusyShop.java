package hornbook.shared.store.bench;

import hornbook.shared.shop.Contact;
import hornbook.shared.shop.Movement;
import hornbook.shared.store.Books;
import hornbook.shared.store.SmallShop;
import java.nio.file.Path;
import java.util.Random;

/** An invented shop with a history of deeds, undoings, entries and customers. */
final class BusyShop {
    private BusyShop() {}

    static void make(Path folder, int deeds, long seed) {
        Random random = new Random(seed);
        try (Books books = SmallShop.in(folder)) {
            for (int i = 2; i < 60; i++) {
                String lot = String.format("lot-%04d", i);
                books.write("new lot " + i, w -> w.put(SmallShop.lot(lot, "d-1")));
            }
            for (int i = 0; i < deeds; i++) {
                one(books, random, i);
            }
        }
    }

    private static void one(Books books, Random random, int i) {
        switch (random.nextInt(6)) {
            case 0 -> books.write("label", w -> w.put(SmallShop.drawer(1, "LABEL " + i)));
            case 1 -> books.write("entry", w -> w.entry("model/m-" + i % 7 + ".json", "{\"n\":" + i + "}"));
            case 2 -> books.write("customer", w -> w.put(new Contact("O-" + i % 50, "Invented " + i, "by letter")));
            case 3 -> books.write("setting", w -> w.setting("s" + i % 5, "\"" + i + "\""));
            // Never below none: a check names that, and would then be taken for having noticed something else.
            default -> books.write("stock", w -> w.put(SmallShop.move(w.nextId(Movement.class), random.nextInt(9))));
        }
    }
}
