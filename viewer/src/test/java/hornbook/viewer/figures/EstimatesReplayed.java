package hornbook.viewer.figures;

import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;

/** Estimates each closed job of the demo from the jobs before it, and counts how often it took longer than said. */
public final class EstimatesReplayed {
    private EstimatesReplayed() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("replay").resolve("demo");
        try (Workshop demo = DemoShop.in(folder)) {
            long begun = System.nanoTime();
            HonestyAnswer answer = demo.honesty().answer();
            System.out.printf(
                    "%d jobs: at or under P50 %.1f %%, at or under P80 %.1f %%; mean |ln error| %.3f, the book's %.3f (%.1f s)%n",
                    answer.jobs(),
                    100 * answer.underP50(),
                    100 * answer.underP80(),
                    answer.logError(),
                    answer.bookLogError(),
                    (System.nanoTime() - begun) / 1e9);
        }
    }
}
