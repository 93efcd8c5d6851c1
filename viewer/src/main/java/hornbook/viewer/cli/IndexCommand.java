package hornbook.viewer.cli;

import hornbook.indexer.index.Rebuilt;
import hornbook.indexer.index.View;
import hornbook.viewer.workshop.Workshop;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Brings the index up to date, or makes it anew. */
@Command(
        name = "index",
        header = "Makes the search index anew; it is also done by itself whenever it must be.",
        footer = "hornbook index --fresh")
final class IndexCommand implements Callable<Integer> {
    @Option(names = "--fresh", description = "Throw away what there is first.")
    boolean fresh;

    private final Frame frame;

    IndexCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.writing(workshop -> {
            Rebuilt made = fresh ? workshop.index().rebuild() : caughtUp(workshop);
            return frame.answer(
                    made, out -> out.printf("%d records indexed in %.2f s%n", made.documents(), made.seconds()));
        });
    }

    private static Rebuilt caughtUp(Workshop workshop) {
        long start = System.nanoTime();
        int documents = workshop.index().ask(View::documents);
        return new Rebuilt(documents, (System.nanoTime() - start) / 1e9);
    }
}
