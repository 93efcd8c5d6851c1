package hornbook.indexer.bench;

import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Lot;
import hornbook.shared.store.Books;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * What two hundred queries are while they are typed, letter by letter: words, keys, makes, threads, sizes, serials and
 * slips.
 */
record Keystrokes(List<String> typed) {
    private static final List<String> BY_HAND = List.of(
            "neck screw",
            "snap reso 19",
            "G# stuck",
            "low Eb pad",
            "3-48 screw",
            "2.74 mm rod",
            "octave slide halverick",
            "bearing sleeve chantreval",
            "siezed pivot",
            "rod .0937",
            "how did the last chantreval go",
            "pad 31.5",
            "guard screw M3x0.6",
            "cork 1/16",
            "pearl 9.5",
            "spring blue needle",
            "side key wobbles",
            "gis klappe klebt",
            "thumb rest missing",
            "two-pin spaner",
            "bow ring leaks",
            "low B burble",
            "key oil",
            "shellac amber");

    static Keystrokes of(Books books, int queries, long seed) {
        Random random = new Random(seed);
        List<Lot> lots = books.all(Lot.class).stream().limit(900).toList();
        List<Horn> horns = books.all(Horn.class);
        List<String> all = new ArrayList<>(BY_HAND);
        while (all.size() < queries) {
            Lot lot = lots.get(random.nextInt(lots.size()));
            String title = lot.title().replace(",", "");
            all.add(
                    switch (random.nextInt(5)) {
                        case 0 -> title;
                        case 1 -> lot.thread() == null ? title : title.split(" ")[0] + " " + lot.thread();
                        case 2 -> lot.dimensions().split(";")[0].replaceFirst(".*=", "") + " " + title.split(" ")[0];
                        case 3 -> horns.get(random.nextInt(horns.size())).serial();
                        default -> slip(title, random);
                    });
        }
        List<String> typed = new ArrayList<>();
        for (String query : all) {
            for (int n = 1; n <= Math.min(30, query.length()); n++) {
                typed.add(query.substring(0, n));
            }
        }
        Collections.shuffle(typed, random);
        return new Keystrokes(typed);
    }

    /** Every so manieth, for peers that take long. */
    Keystrokes every(int step) {
        List<String> some = new ArrayList<>();
        for (int i = 0; i < typed.size(); i += step) {
            some.add(typed.get(i));
        }
        return new Keystrokes(some);
    }

    private static String slip(String text, Random random) {
        int at = random.nextInt(text.length());
        return text.substring(0, at) + text.substring(at + 1);
    }
}
