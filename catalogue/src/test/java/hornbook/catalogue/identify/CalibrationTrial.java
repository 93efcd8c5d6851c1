package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.shop.Horn;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * How honest the probabilities are, on an open table that is not about horns: {@code FILE.arff --seed S --rounds N
 * --held K}. In each round K classes are held out: nobody entered them. Of the other rows two in five are what the entries
 * state, two are horns of this shop, made out by name, and one is asked about, with one row of a class held
 * out among every twenty or so. Meant for soybean.arff (Michalski and Chilausky 1980, UCI Soybean (Large), 683 rows;
 * in Debian's package weka, usr/share/doc/weka/examples; GPL-2+, so not kept here).
 */
final class CalibrationTrial {
    private static final double MISS = 0.03;
    private static final double UNLISTED_SHARE = 0.05;
    private static final double LISTED = 0.9;

    private final OpenData data;
    private final Random random;

    private CalibrationTrial(OpenData data, long seed) {
        this.data = data;
        this.random = new Random(seed);
    }

    /** What was said of one case: probabilities, unlisted last, and the place of the truth. */
    private record Said(double[] chances, int truth) {}

    public static void main(String[] args) throws IOException {
        Map<String, String> options = new LinkedHashMap<>();
        for (int i = 1; i + 1 < args.length; i += 2) {
            options.put(args[i], args[i + 1]);
        }
        long seed = Long.parseLong(options.getOrDefault("--seed", "1"));
        int rounds = Integer.parseInt(options.getOrDefault("--rounds", "20"));
        int held = Integer.parseInt(options.getOrDefault("--held", "3"));
        CalibrationTrial trial = new CalibrationTrial(new OpenData(Path.of(args[0])), seed);
        List<Said> plain = new ArrayList<>();
        List<Said> learned = new ArrayList<>();
        List<Double> exponents = new ArrayList<>();
        for (int r = 0; r < rounds; r++) {
            exponents.add(trial.round(held, plain, learned));
        }
        System.out.printf("%d rounds, %d classes held out in each, seed %d%n", rounds, held, seed);
        System.out.println("exponents fitted: " + exponents);
        report("as stated, exponent 1", plain);
        report("learned and fitted", learned);
    }

    /** @return the exponent fitted */
    private double round(int held, List<Said> plain, List<Said> learned) throws IOException {
        List<String> classes = new ArrayList<>(
                data.rows().stream().map(OpenData::classOf).distinct().toList());
        Collections.shuffle(classes, random);
        List<String> out = classes.subList(0, held);
        List<List<String>> listed = new ArrayList<>();
        List<List<String>> unlisted = new ArrayList<>();
        data.rows().forEach(r -> (out.contains(OpenData.classOf(r)) ? unlisted : listed).add(r));
        Collections.shuffle(listed, random);
        Collections.shuffle(unlisted, random);
        int twoInFive = listed.size() * 2 / 5;
        List<List<String>> asked = new ArrayList<>(listed.subList(2 * twoInFive, listed.size()));
        int few = Math.min(unlisted.size(), (int) Math.round(asked.size() * UNLISTED_SHARE));
        asked.addAll(unlisted.subList(0, few));
        Catalogue catalogue = data.catalogue(Files.createTempDirectory("open"), listed.subList(0, twoInFive), MISS);
        Experience horns = horns(catalogue, listed.subList(twoInFive, 2 * twoInFive));
        ask(new Weighing(catalogue, horns, false), 1, asked, plain);
        Weighing weighing = new Weighing(catalogue, horns, true);
        double exponent = new ExponentFit(weighing, horns).best();
        ask(weighing, exponent, asked, learned);
        return exponent;
    }

    private Experience horns(Catalogue catalogue, List<List<String>> rows) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        Map<String, List<Seen>> looks = new LinkedHashMap<>();
        List<Horn> sure = new ArrayList<>();
        for (List<String> row : rows) {
            String id = "h-" + looks.size();
            String model = OpenData.classOf(row);
            if (catalogue.models().containsKey(model)) {
                counts.merge(model, 1, Integer::sum);
                looks.put(id, data.looks(row));
                sure.add(new Horn(id, model, null, "", "", null, null, null, null, "name on bell", "sure", ""));
            }
        }
        return new Experience(counts, 0, looks, sure, sure);
    }

    private void ask(Weighing weighing, double exponent, List<List<String>> asked, List<Said> said) {
        List<String> ids = weighing.models().stream().map(m -> m.id()).toList();
        for (List<String> row : asked) {
            Case horn = new Case(data.looks(row), null, null, null, null, null, false);
            double[] chances = weighing.stand(horn, exponent).posterior();
            int truth = ids.indexOf(OpenData.classOf(row));
            said.add(new Said(chances, truth < 0 ? ids.size() : truth));
        }
    }

    private static void report(String title, List<Said> said) {
        double right = said.stream().filter(s -> best(s) == s.truth()).count();
        double brier =
                said.stream().mapToDouble(CalibrationTrial::brier).average().orElseThrow();
        double[] lists = lists(said);
        System.out.printf(
                "%s: %d cases; first right %.3f; expected calibration error %.3f; Brier %.3f; "
                        + "the 90 %% list holds the truth in %.3f with %.2f names%n",
                title, said.size(), right / said.size(), calibrationError(said), brier, lists[0], lists[1]);
        long held =
                said.stream().filter(s -> s.truth() == s.chances().length - 1).count();
        long known = said.stream()
                .filter(s -> s.truth() == s.chances().length - 1 && best(s) == s.truth())
                .count();
        System.out.printf("    of %d that nobody entered, %d were called unlisted first%n", held, known);
    }

    private static int best(Said said) {
        int best = 0;
        for (int e = 1; e < said.chances().length; e++) {
            best = said.chances()[e] > said.chances()[best] ? e : best;
        }
        return best;
    }

    private static double brier(Said said) {
        double sum = 0;
        for (int e = 0; e < said.chances().length; e++) {
            double miss = said.chances()[e] - (e == said.truth() ? 1 : 0);
            sum += miss * miss;
        }
        return sum;
    }

    /** Ten bins of the best candidate's probability (Naeini, Cooper and Hauskrecht, AAAI 2015). */
    private static double calibrationError(List<Said> said) {
        double[] n = new double[10];
        double[] hoped = new double[10];
        double[] came = new double[10];
        for (Said s : said) {
            double p = s.chances()[best(s)];
            int bin = Math.min(9, (int) (p * 10));
            n[bin]++;
            hoped[bin] += p;
            came[bin] += best(s) == s.truth() ? 1 : 0;
        }
        double error = 0;
        for (int b = 0; b < 10; b++) {
            error += Math.abs(hoped[b] - came[b]) / said.size();
        }
        return error;
    }

    /** The shortest list that makes nine in ten: how often the truth is on it, how long it is. */
    private static double[] lists(List<Said> said) {
        double held = 0;
        double names = 0;
        for (Said s : said) {
            Integer[] order = new Integer[s.chances().length];
            Arrays.setAll(order, i -> i);
            Arrays.sort(order, (a, b) -> Double.compare(s.chances()[b], s.chances()[a]));
            double sum = 0;
            for (int i = 0; i < order.length && sum < LISTED; i++) {
                sum += s.chances()[order[i]];
                names++;
                held += order[i] == s.truth() ? 1 : 0;
            }
        }
        return new double[] {held / said.size(), names / said.size()};
    }
}
