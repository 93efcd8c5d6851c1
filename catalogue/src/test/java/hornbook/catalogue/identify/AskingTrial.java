package hornbook.catalogue.identify;

import java.nio.file.Files;

/** The whole trial, a program: {@code --n} horns and a {@code --seed}. */
final class AskingTrial {
    private AskingTrial() {}

    public static void main(String[] args) throws Exception {
        int n = Integer.parseInt(args.length > 1 ? args[1] : "500");
        long seed = Long.parseLong(args.length > 3 ? args[3] : "1");
        try (Demo demo = new Demo(Files.createTempDirectory("demo"))) {
            Knowledge plain =
                    Knowledge.plain(demo.catalogue(), new ExperienceReader(demo.catalogue(), demo.books()).read());
            System.out.printf("horns %d, seed %d%n", n, seed);
            looks(new Trial(plain, 1, 0, seed), n);
            for (double exponent : new double[] {ExponentFit.USUAL, 1}) {
                wrong(plain, exponent, n, seed);
            }
        }
    }

    private static void looks(Trial trial, int n) {
        double[] looks = new double[Trial.Order.values().length];
        for (int i = 0; i < n; i++) {
            int truth = trial.draw();
            for (Trial.Order order : Trial.Order.values()) {
                looks[order.ordinal()] += trial.ask(truth, order, 100).looks();
            }
        }
        for (Trial.Order order : Trial.Order.values()) {
            System.out.printf(
                    "%-14s %.2f looks, %.3f of random%n",
                    order, looks[order.ordinal()] / n, looks[order.ordinal()] / looks[Trial.Order.RANDOM.ordinal()]);
        }
    }

    private static void wrong(Knowledge plain, double exponent, int n, long seed) {
        for (Trial.Order order : Trial.Order.values()) {
            Trial trial = new Trial(plain, exponent, 0.125, seed);
            int among = 0;
            for (int i = 0; i < n; i++) {
                among += trial.ask(trial.draw(), order, 20).place() <= 3 ? 1 : 0;
            }
            System.out.printf(
                    "one in eight wrong, exponent %.1f, %s: among three %.3f%n", exponent, order, (double) among / n);
        }
    }
}
