package hornbook.catalogue.entry.bench;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Kind;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/**
 * What opening the shipped catalogue costs, in processor time of the thread: once cold, then turn about with its
 * floor, running over the same files token by token. Start it in a JVM of its own.
 */
public final class OpenCatalogue {
    private static final int ROUNDS = 9;

    private OpenCatalogue() {}

    /** Takes no arguments. */
    public static void main(String[] arguments) throws IOException {
        double cold = time(Catalogue::shipped);
        double[] subject = new double[ROUNDS];
        double[] floor = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            subject[i] = time(Catalogue::shipped);
            floor[i] = time(OpenCatalogue::tokens);
        }
        System.out.printf("cold %.0f ms%n", cold);
        print("open", subject);
        print("tokens alone", floor);
    }

    private static void tokens() {
        JsonFactory json = new JsonFactory();
        for (Kind kind : Kind.values()) {
            String path = "/hornbook/catalogue/entries/" + kind.word() + ".json";
            try (InputStream in = OpenCatalogue.class.getResourceAsStream(path)) {
                if (in != null) {
                    JsonParser parser = json.createParser(ObjectReadContext.empty(), in.readAllBytes());
                    while (parser.nextToken() != null) {
                        parser.getString();
                    }
                }
            } catch (IOException e) {
                throw new IllegalStateException(path, e);
            }
        }
    }

    private static double time(Runnable work) {
        var threads = ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadCpuTime();
        work.run();
        return (threads.getCurrentThreadCpuTime() - before) / 1e6;
    }

    private static void print(String what, double[] times) {
        Arrays.sort(times);
        System.out.printf(
                "%s: min %.1f, median %.1f, max %.1f ms%n", what, times[0], times[ROUNDS / 2], times[ROUNDS - 1]);
    }
}
