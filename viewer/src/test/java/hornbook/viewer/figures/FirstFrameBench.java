package hornbook.viewer.figures;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * How long the window takes to open, as a whole process from its start to its end once a few frames are drawn, on a shop
 * that is there: with its start-up cache, without, and a virtual machine that prints one line, in turn:
 * {@code SHOP [ROUNDS]}, after {@code viewer/hornbook} was built. Drawn without a screen.
 */
final class FirstFrameBench {
    private static final Path APP = Path.of("target", "app");

    public static void main(String[] line) throws Exception {
        Path shop = Path.of(line[0]).toAbsolutePath();
        int rounds = line.length > 1 ? Integer.parseInt(line[1]) : 7;
        Path hello = Files.writeString(
                Files.createTempDirectory("hello").resolve("Hello.java"),
                "public class Hello { public static void main(String[] a) { System.out.println(1); } }");
        took(List.of("javac", hello.toString()));
        List<List<String>> all = List.of(
                window(shop, "-XX:AOTCache=" + APP.resolve("window.aot")),
                window(shop, "-Xshare:auto"),
                List.of("java", "-XX:+UseSerialGC", "-cp", hello.getParent().toString(), "Hello"));
        double[][] seconds = new double[all.size()][rounds];
        for (int round = -1; round < rounds; round++) {
            for (int i = 0; i < all.size(); i++) {
                double took = took(all.get(i));
                if (round >= 0) {
                    seconds[i][round] = took;
                }
            }
        }
        System.out.printf(
                Locale.ROOT,
                "with cache %s s, without %s s, bare %s s%n",
                spread(seconds[0]),
                spread(seconds[1]),
                spread(seconds[2]));
        System.out.printf(
                Locale.ROOT,
                "with / without: %s; with / bare: %s%n",
                spread(ratio(seconds[0], seconds[1])),
                spread(ratio(seconds[0], seconds[2])));
    }

    private static List<String> window(Path shop, String cache) throws IOException {
        List<String> path = new ArrayList<>();
        path.add(APP.resolve("hornbook.jar").toAbsolutePath().toString());
        try (Stream<Path> jars = Files.list(APP.resolve("lib").toAbsolutePath())) {
            jars.filter(jar -> jar.toString().endsWith(".jar"))
                    .sorted(Comparator.comparing(Path::toString))
                    .forEach(jar -> path.add(jar.toString()));
        }
        return List.of(
                "java",
                cache,
                "-Xmx1g",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Dglass.platform=Headless",
                "-Dprism.order=sw",
                "-Djdk.reflect.useNativeAccessorOnly=true",
                "-Dslf4j.provider=org.slf4j.jul.JULServiceProvider",
                "-Dslf4j.internal.verbosity=WARN",
                "-Dorg.sqlite.lib.path=" + APP.resolve("native").toAbsolutePath(),
                "-Dorg.sqlite.lib.name=libsqlitejdbc.so",
                "--enable-native-access=javafx.graphics,ALL-UNNAMED",
                "-p",
                APP.resolve("fx").toAbsolutePath().toString(),
                "--add-modules",
                "javafx.controls",
                "-cp",
                String.join(":", path),
                "hornbook.viewer.Main",
                "train",
                "--alone",
                "--shop",
                shop.toString());
    }

    private static double took(List<String> words) throws Exception {
        List<String> command = new ArrayList<>(words);
        command.set(
                0,
                Path.of(System.getProperty("java.home"), "bin", words.getFirst())
                        .toString());
        Path said = Files.createTempFile("said", ".txt");
        long begin = System.nanoTime();
        int code = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start()
                .waitFor();
        double seconds = (System.nanoTime() - begin) / 1e9;
        if (code != 0) {
            throw new IllegalStateException(Files.readString(said));
        }
        return seconds;
    }

    private static double[] ratio(double[] ours, double[] theirs) {
        double[] ratios = new double[ours.length];
        Arrays.setAll(ratios, i -> ours[i] / theirs[i]);
        return ratios;
    }

    private static String spread(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return String.format(
                Locale.ROOT, "%.2f / %.2f / %.2f", sorted[0], sorted[sorted.length / 2], sorted[sorted.length - 1]);
    }
}
