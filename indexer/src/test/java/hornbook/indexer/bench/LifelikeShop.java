package hornbook.indexer.bench;

import hornbook.indexer.index.DemoShop;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.store.Books;
import hornbook.shared.store.Writing;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

/**
 * A shop of any size, made of the demonstration shop's own records with other sizes, places, serials and words: of what
 * is added 61 % lots, 33 % jobs with 3 to 14 sentences and their horns, 6 % drawers. What is known is the shipped
 * knowledge, some 1 500 cards whatever the size.
 */
public final class LifelikeShop {
    private static final int SIDE = 20;
    private static final int A_DEED = 5_000;

    private final Random random;
    private final List<Lot> lots;
    private final List<Job> jobs;
    private final List<Horn> horns;
    private final Sentences sentences;
    private Horn horn;
    private int drawers;

    private LifelikeShop(Books books, long seed) {
        random = new Random(seed);
        lots = books.all(Lot.class);
        jobs = books.all(Job.class);
        horns = books.all(Horn.class);
        horn = horns.getFirst();
        sentences = new Sentences(books, random);
    }

    /** Opens a new shop in the folder with about that many records, the same for the same seed. */
    public static Books open(Path folder, int records, long seed) {
        Books books = DemoShop.open(folder);
        LifelikeShop shop = new LifelikeShop(books, seed);
        for (int from = 0; from < records; from += A_DEED) {
            int first = from;
            books.write("more", w -> shop.fill(w, first, Math.min(records, first + A_DEED)));
        }
        return books;
    }

    private void fill(Writing writing, int from, int to) {
        for (int i = from; i < to; i++) {
            writing.put(next(writing, i));
        }
    }

    private ShopRecord next(Writing writing, int number) {
        int of = number % 18;
        if (of == 0) {
            return drawer(writing);
        }
        if (of == 1) {
            return anotherHorn(number);
        }
        return of < 7 ? job(number) : lot(number);
    }

    private Drawer drawer(Writing writing) {
        int cabinet = drawers / (SIDE * SIDE);
        int within = drawers % (SIDE * SIDE);
        if (within == 0) {
            writing.put(new Cabinet("c-more" + cabinet, "More " + cabinet, SIDE, SIDE, "along the wall", ""));
        }
        drawers++;
        Lot one = lots.get(random.nextInt(lots.size()));
        return new Drawer(
                "d-more" + drawers,
                "c-more" + cabinet,
                within / SIDE + 1,
                within % SIDE + 1,
                one.title().split(",")[0],
                "",
                one.title(),
                LabelState.RIGHT,
                null,
                "");
    }

    private Horn anotherHorn(int number) {
        Horn one = horns.get(random.nextInt(horns.size()));
        horn = new Horn(
                "h-9" + number,
                one.model(),
                one.make(),
                one.instrument(),
                Integer.toString(1_000 + random.nextInt(900_000)),
                one.soldAs(),
                one.yearAbout(),
                null,
                one.firstSeen(),
                one.identifiedBy(),
                one.sureness(),
                sentences.some(0, 1));
        return horn;
    }

    private Job job(int number) {
        Job one = jobs.get(random.nextInt(jobs.size()));
        return new Job(
                "j-9" + number,
                horn.id(),
                one.kind(),
                one.tookIn(),
                one.promised(),
                one.done(),
                one.status(),
                sentences.some(1, 3),
                one.quirksMet(),
                one.went(),
                sentences.some(1, 4),
                one.quotedMin(),
                one.minutesTotal(),
                null,
                sentences.some(1, 7));
    }

    private Lot lot(int number) {
        Lot one = lots.get(random.nextInt(lots.size()));
        return new Lot(
                "lot-9" + number,
                "d-more" + drawers,
                null,
                one.item(),
                one.title(),
                one.fitsMakes(),
                one.fitsModels(),
                sentences.otherSize(one.dimensions()),
                one.thread(),
                one.material(),
                one.colour(),
                one.state(),
                Count.Rough.values()[random.nextInt(3)],
                one.reserve(),
                one.keepsake(),
                one.supplier(),
                one.pack(),
                random.nextInt(10) == 0 ? sentences.some(1, 1) : "");
    }
}
