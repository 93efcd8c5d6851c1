package hornbook.shared.store.bench;

import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.shared.store.SmallShop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Many openings of one shop at the same moment: one writes, the rest read. */
public final class Starts {
    private Starts() {}

    /** Openings that got to write, and those that read. */
    public record Outcome(int writers, int readers) {}

    public static Outcome run(Path folder, int n) throws Exception {
        SmallShop.in(folder.resolve("starts")).close();
        CountDownLatch go = new CountDownLatch(1);
        List<Future<Books>> opened = new ArrayList<>();
        try (var threads = Executors.newFixedThreadPool(n)) {
            for (int i = 0; i < n; i++) {
                opened.add(threads.submit(() -> {
                    go.await();
                    return Books.open(folder.resolve("starts"), Access.WRITE_IF_FREE);
                }));
            }
            go.countDown();
            int writers = 0;
            List<Books> all = new ArrayList<>();
            for (Future<Books> one : opened) {
                all.add(one.get());
                writers += all.getLast().writable() ? 1 : 0;
            }
            all.forEach(Books::close);
            return new Outcome(writers, n - writers);
        }
    }
}
